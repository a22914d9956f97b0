using System.Collections.Immutable;
using System.Globalization;
using CushionService.Engine.Cutting;
using CushionService.Engine.Geometry;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Fitting;

/// <summary>What an offcut gives to lay pieces on.</summary>
/// <remarks>It is cut by the same rules as fabric from the bolt (see <see cref="FabricSale"/>), read backwards: what is lost to squaring
/// the ends and to the start of the repeat, then to the wash. An offcut that is narrower than the fabric without its selvedges counts as
/// free of them (common
/// practice, no source). Where the motif is on an offcut is not known along, nor across unless it has the fabric's whole
/// width.</remarks>
public sealed record OffcutRoom
{
    // Strips are about as high, and rarely lie on a shorter chord of a hide (common practice, no source).
    private static readonly Length StripHeight = Length.FromMillimetres(100);
    private const int Chords = 60;

    private OffcutRoom(FabricSpecification fabric, Length length, Length start) => (Fabric, Length, Start) = (fabric, length, start);

    /// <summary>Names its dye lot; an offcut of an unknown lot is one of its own.</summary>
    public string Lot { get; private init; } = "";

    /// <summary>The fabric, as wide as the offcut.</summary>
    public FabricSpecification Fabric { get; }

    /// <summary>Across, for laying.</summary>
    public Length Width => Fabric.UsableWidth;

    /// <summary>Along, for laying.</summary>
    public Length Length { get; private init; }

    /// <summary>What is kept beside that to find the motif, after the wash.</summary>
    public Length Start { get; private init; }

    /// <summary>Whether anything can be laid on it.</summary>
    public bool IsEmpty => Width <= Length.Zero || Length <= Length.Zero;

    /// <summary>Corners of a hide's outline, counter-clockwise, after the wash; empty for a rectangle.</summary>
    public ImmutableArray<Point> Outline { get; private init; } = [];

    /// <summary>Its corners, counter-clockwise.</summary>
    public ImmutableArray<Point> Corners =>
        Outline.IsEmpty ? [default, new(Width, Length.Zero), new(Width, Length), new(Length.Zero, Length)] : Outline;

    /// <summary>Area for laying.</summary>
    public Area Area =>
        IsEmpty ? default
        : Outline.IsEmpty ? Area.Of(Width, Length)
        : Polygon.Area(Outline);

    /// <summary>The same with what is kept to find the motif: what this does not hold, the offcut holds at no place of the motif.</summary>
    public OffcutRoom Whole => this with { Length = Length + Start, Start = Length.Zero };

    /// <summary>The rooms of a fabric's offcuts, in their order.</summary>
    /// <param name="fabric">The fabric.</param>
    /// <param name="isMatched">Whether a piece is matched to its repeat; where none is, nothing is kept to find the motif.</param>
    public static ImmutableArray<OffcutRoom> Of(FabricSpecification fabric, bool isMatched) =>
        [.. fabric.OnHand.Select((offcut, i) => Of(fabric, offcut, isMatched) with { Lot = LotOf(offcut.Lot ?? fabric.Lot, i) })];

    /// <summary>The rooms for some pieces.</summary>
    /// <inheritdoc cref="Of(FabricSpecification, bool)"/>
    /// <param name="fabric">The fabric.</param>
    /// <param name="pieces">Its pieces.</param>
    public static ImmutableArray<OffcutRoom> Of(FabricSpecification fabric, IEnumerable<CutPiece> pieces) =>
        Of(fabric, pieces.Any(piece => FabricNesting.IsMatched(fabric, piece)));

    /// <summary>The fabric as wide as each of its offcuts, the widest first: long strips and wide faces are joined to suit one of
    /// them.</summary>
    /// <param name="fabric">A fabric.</param>
    /// <returns>Each width once; the fabric itself when it has no offcuts. Of hides the widest alone, for a search on them takes
    /// long.</returns>
    public static ImmutableArray<FabricSpecification> Widths(FabricSpecification fabric)
    {
        ImmutableArray<OffcutRoom> rooms = Of(fabric, isMatched: false);
        ImmutableArray<FabricSpecification> widths =
        [
            .. rooms.Select(room => room.ForStrips).DistinctBy(one => one.Width).OrderByDescending(one => one.Width),
        ];
        return widths.IsEmpty ? [fabric]
            : rooms.Any(room => !room.Outline.IsEmpty) ? widths[..1]
            : widths;
    }

    // A strip must lie within a hide's outline, which its box says nothing of.
    private FabricSpecification ForStrips =>
        Outline.IsEmpty
            ? Fabric
            : Fabric with
            {
                Width = Length.Max(new HideOutline(Outline).Widest(StripHeight, Chords), FabricTrade.NarrowestUsable),
            };

    // Offcuts of unknown lots are never taken to be of one lot, since their colours may differ.
    private static string LotOf(string? lot, int number) =>
        lot is null ? string.Create(CultureInfo.InvariantCulture, $"offcut {number + 1}") : $"lot {lot}";

    private static OffcutRoom Of(FabricSpecification fabric, OffcutSpecification offcut, bool isMatched)
    {
        // Where the offcut keeps the fabric's whole width, the motif is still where it is across the bolt.
        Length clean = fabric.Width - 2 * fabric.Selvedge;
        RepeatSpecification? repeat = fabric.Repeat is { } bolt
            ? bolt with
            {
                MotifX = offcut.Width >= clean ? bolt.MotifX : null,
                MotifY = null,
            }
            : null;
        FabricSpecification cut = fabric with
        {
            Width = Length.Min(offcut.Width, clean),
            Selvedge = Length.Zero,
            Repeat = repeat,
            OnHand = [],
        };
        if (!offcut.Outline.IsEmpty)
        {
            // A hide has no ends to square, and no selvedges.
            Length Across(Length length) =>
                Length.FromNanometres(FabricSpecification.Kept(fabric.WidthShrinkage).FloorOf(length.Nanometres));
            FabricSpecification hide = cut with { Width = offcut.Width, Squaring = Length.Zero };
            return new OffcutRoom(hide, Kept(hide, offcut.Length), Length.Zero)
            {
                Outline = [.. offcut.Outline.Select(corner => new Point(Across(corner.X), Kept(hide, corner.Y)))],
            };
        }

        // An offcut that is shorter than a repeat is kept whole.
        Length square = Length.Max(offcut.Length - fabric.Squaring, Length.Zero),
            start = isMatched && repeat?.Length is { } kept ? Length.Min(kept, square) : Length.Zero;
        return new OffcutRoom(cut, Kept(cut, square - start), Kept(cut, start));
    }

    // What is left after the wash, down to a nanometre: a layout must not count on more than there is. Never below zero.
    private static Length Kept(FabricSpecification fabric, Length length) =>
        Length.FromNanometres(FabricSpecification.Kept(fabric.LengthShrinkage).FloorOf(Math.Max(length.Nanometres, 0)));
}
