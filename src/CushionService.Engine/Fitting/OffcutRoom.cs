using System.Collections.Immutable;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Fitting;

/// <summary>What an offcut gives to lay pieces on.</summary>
/// <remarks>It is cut by the same rules as fabric from the bolt (see <see cref="FabricSale"/>), read backwards: what is lost to squaring
/// the ends and to the start of the repeat, then to the wash. An offcut that is narrower than the fabric without its selvedges counts as
/// free of them; where the fabric has a
/// repeat across, up to one repeat of a narrower offcut's width goes to bring a motif to its middle (common practice, no source).</remarks>
public sealed record OffcutRoom
{
    private OffcutRoom(FabricSpecification fabric, Length length) => (Fabric, Length) = (fabric, length);

    /// <summary>The fabric, as wide as the offcut.</summary>
    public FabricSpecification Fabric { get; }

    /// <summary>Across, for laying.</summary>
    public Length Width => Fabric.UsableWidth;

    /// <summary>Along, for laying.</summary>
    public Length Length { get; }

    /// <summary>Whether anything can be laid on it.</summary>
    public bool IsEmpty => Width <= Length.Zero || Length <= Length.Zero;

    /// <summary>Area for laying.</summary>
    public Area Area => IsEmpty ? default : Area.Of(Width, Length);

    /// <summary>The rooms of a fabric's offcuts, in their order.</summary>
    public static ImmutableArray<OffcutRoom> Of(FabricSpecification fabric) => [.. fabric.OnHand.Select(offcut => Of(fabric, offcut))];

    /// <summary>The fabric as wide as its widest offcut, by which long strips are joined.</summary>
    public static FabricSpecification Widest(FabricSpecification fabric) =>
        Of(fabric).Select(room => room.Fabric).MaxBy(fabric => fabric.Width) ?? fabric;

    private static OffcutRoom Of(FabricSpecification fabric, OffcutSpecification offcut)
    {
        Length clean = fabric.Width - 2 * fabric.Selvedge;
        Length width = Length.Min(offcut.Width, clean);
        if (width < clean && fabric.Repeat?.Width is { } across)
        {
            width = Length.Max(width - across, Length.Zero);
        }

        Length whole = offcut.Length - fabric.Squaring - (fabric.Repeat?.Length ?? Length.Zero);
        long kept = FabricSpecification.Kept(fabric.LengthShrinkage).FloorOf(Math.Max(whole.Nanometres, 0));
        return new OffcutRoom(fabric with { Width = width, Selvedge = Length.Zero, OnHand = [] }, Length.FromNanometres(kept));
    }
}
