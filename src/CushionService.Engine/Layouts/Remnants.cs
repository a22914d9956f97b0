using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Layouts;

/// <summary>Finds the maximal empty rectangles of a length sold.</summary>
/// <remarks>Each begins at the start or at the end of a piece, and grows along until no part of it that touches that piece is open: the
/// method of Naamad, Lee and Hsu (1984) for the largest empty rectangle among points, with pieces in their place. A piece that is no
/// rectangle counts as its bounding box.</remarks>
public sealed class Remnants
{
    // What is listed; more is read by nobody.
    private const int Most = 20;

    private readonly (long Left, long Right, long Start, long End)[] _laid;
    private readonly long _width;
    private readonly long _length;
    private readonly long _least;
    private readonly long _longestPiece;
    private readonly List<Remnant> _found = [];

    // What is open beside the pieces of one line, and what they leave of it; used anew for each rectangle.
    private List<(long Left, long Right)> _open = [];
    private List<(long Left, long Right)> _still = [];

    private Remnants(ImmutableArray<LaidPiece> laid, Length width, Length length, Length least)
    {
        (_width, _length, _least) = (width.Nanometres, length.Nanometres, least.Nanometres);
        _laid = new (long, long, long, long)[laid.Length];
        for (var i = 0; i < laid.Length; i++)
        {
            LaidPiece piece = laid[i];
            _laid[i] = (piece.X.Nanometres, (piece.X + piece.Width).Nanometres, piece.Y.Nanometres, (piece.Y + piece.Length).Nanometres);
            _longestPiece = Math.Max(_longestPiece, piece.Length.Nanometres);
        }

        Array.Sort(_laid, static (one, other) => (one.Start, one.Left).CompareTo((other.Start, other.Left)));
    }

    /// <summary>The remnants of what is sold, the longest first, then the widest; at most 20. They may overlap.</summary>
    /// <param name="yardage">The length sold; what finds the repeat, squares the ends and is lost to the wash is no remnant.</param>
    /// <param name="least">What is narrower or shorter is swept up, not kept.</param>
    public static ImmutableArray<Remnant> Of(Yardage yardage, Length least)
    {
        ArgumentNullException.ThrowIfNull(yardage);
        FabricLayout layout = yardage.Layout;
        FabricSpecification fabric = layout.Fabric;
        var rolls = (int)fabric.Sold.StepsFor(yardage.Sold);
        return fabric.Sold.IsByTheRoll && rolls > 1 && !layout.CrossesRolls
            ? OfRolls(layout, rolls, least)
            : Of(layout.Placements, fabric.UsableWidth, FabricSale.Left(fabric, yardage.Sold, layout.Start), least);
    }

    // A remnant ends where its roll does.
    private static ImmutableArray<Remnant> OfRolls(FabricLayout layout, int rolls, Length least)
    {
        (Length pitch, Length length) = (
            RollLayout.Pitch(layout.Fabric),
            FabricSale.Left(layout.Fabric, layout.Fabric.Sold.Step, Length.Zero)
        );
        ILookup<long, LaidPiece> laid = layout.Placements.ToLookup(one => one.Y.Nanometres / pitch.Nanometres);
        return
        [
            .. Enumerable
                .Range(0, rolls)
                .SelectMany(roll =>
                    Of([.. laid[roll].Select(one => one with { Y = one.Y - roll * pitch })], layout.Fabric.UsableWidth, length, least)
                        .Select(remnant => remnant with { Y = remnant.Y + roll * pitch })
                )
                .OrderByDescending(remnant => (remnant.Length.Nanometres, remnant.Width.Nanometres))
                .Take(Most),
        ];
    }

    /// <summary>The remnants of a length on which pieces lie.</summary>
    /// <param name="laid">The pieces.</param>
    /// <param name="width">Across.</param>
    /// <param name="length">Along.</param>
    /// <param name="least">The narrowest and shortest to be listed, above zero.</param>
    public static ImmutableArray<Remnant> Of(ImmutableArray<LaidPiece> laid, Length width, Length length, Length least)
    {
        var remnants = new Remnants(laid, width, length, least);
        remnants.Grow(0, 0, remnants._width);
        foreach ((long left, long right, _, long end) in remnants._laid)
        {
            remnants.Grow(end, left, right);
        }

        return remnants.Longest();
    }

    // Two pieces that end on one line find the same rectangle.
    private ImmutableArray<Remnant> Longest()
    {
        _found.Sort(static (one, other) => (other.Length, other.Width, one.Y, one.X).CompareTo((one.Length, one.Width, other.Y, other.X)));
        var longest = ImmutableArray.CreateBuilder<Remnant>(Math.Min(_found.Count, Most));
        foreach (Remnant remnant in _found)
        {
            if (longest.Count < Most && (longest.Count == 0 || longest[^1] != remnant))
            {
                longest.Add(remnant);
            }
        }

        return longest.DrainToImmutable();
    }

    // From a line along which something lies below: a stretch stays open only while it still touches that.
    // Maximal by construction: it cannot grow back over the piece that it touches, nor on past the one that ends it.
    private void Grow(long start, long left, long right)
    {
        if (_length - start < _least)
        {
            return;
        }

        _open.Clear();
        _open.Add((0, _width));
        for (int from = FirstBeyond(start - _longestPiece), to; from < _laid.Length && _open.Count > 0; from = to)
        {
            // What begins on one line ends a stretch together: one piece by itself would leave a rectangle beside it that is not maximal.
            for (to = from; to < _laid.Length && _laid[to].Start == _laid[from].Start; to++) { }
            ReadOnlySpan<(long Left, long Right, long Start, long End)> line = _laid.AsSpan(from, to - from);
            _still.Clear();
            foreach ((long Left, long Right) stretch in _open)
            {
                if (Split(stretch, line, start, (left, right)))
                {
                    Keep(stretch, start, _laid[from].Start);
                }
            }

            (_open, _still) = (_still, _open);
        }

        foreach ((long Left, long Right) stretch in _open)
        {
            Keep(stretch, start, _length);
        }
    }

    // The first piece that starts beyond a line. Those before it end before they reach a line that lies further on by the longest piece.
    private int FirstBeyond(long line)
    {
        var (from, to) = (0, _laid.Length);
        while (from < to)
        {
            int middle = from + (to - from) / 2;
            (from, to) = _laid[middle].Start > line ? (from, middle) : (middle + 1, to);
        }

        return from;
    }

    // What the pieces of a line leave of a stretch is still open; false where none of them reaches beyond the start and into it.
    private bool Split(
        (long Left, long Right) stretch,
        ReadOnlySpan<(long Left, long Right, long Start, long End)> line,
        long start,
        (long Left, long Right) touched
    )
    {
        bool split = false;
        foreach ((long left, long right, _, long end) in line)
        {
            if (end > start && left < stretch.Right && stretch.Left < right)
            {
                split = true;
                Open((stretch.Left, left), touched);
                stretch.Left = right;
            }
        }

        Open(stretch, touched);
        return split;
    }

    // A part that is too narrow, or does not touch what lies below any more, is not open.
    private void Open((long Left, long Right) part, (long Left, long Right) touched)
    {
        if (part.Right - part.Left >= _least && part.Left < touched.Right && touched.Left < part.Right)
        {
            _still.Add(part);
        }
    }

    private void Keep((long Left, long Right) stretch, long start, long end)
    {
        if (end - start >= _least && stretch.Right - stretch.Left >= _least)
        {
            _found.Add(
                new Remnant(
                    Length.FromNanometres(stretch.Left),
                    Length.FromNanometres(start),
                    Length.FromNanometres(stretch.Right - stretch.Left),
                    Length.FromNanometres(end - start)
                )
            );
        }
    }
}
