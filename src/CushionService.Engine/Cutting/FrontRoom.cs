using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Cutting;

/// <summary>How far the piece of a strip that shows its front may reach and still find its motif within the fabric's width.</summary>
/// <remarks>Where the motif's place across is known, the piece must lie within the width with its matching point on a motif. Where it is
/// not, a piece that leaves a repeat beside it is matched wherever the motif is; a front that is too long for that is cut no longer than
/// itself, as its face is, so that it is matched wherever the face is (follows from the lattice).</remarks>
internal sealed class FrontRoom
{
    // The cut lines of the widest piece about each motif, as finished distances from the strip's start; none where no motif is known.
    private readonly ImmutableArray<(Length From, Length To)> _windows;
    private readonly Length _most;

    private FrontRoom(ImmutableArray<(Length From, Length To)> windows, Length most) => (_windows, _most) = (windows, most);

    /// <summary>The room of a strip; null where its front is not matched across, or cannot be.</summary>
    /// <param name="strip">The strip, with its matching point.</param>
    /// <param name="fabric">Its fabric, on which it is not railroaded.</param>
    /// <param name="widest">How wide a strip may be cut on it, a whole number of steps.</param>
    /// <param name="seam">Seam allowance of its joins.</param>
    /// <param name="step">The workroom's cutting step, above zero.</param>
    public static FrontRoom? Of(Panel strip, FabricSpecification fabric, Length widest, Length seam, Length step)
    {
        if (
            strip.Match is not { } match
            || strip.Stretches is not { } stretches
            || StripStretch.Front(stretches) is not { } front
            || fabric.LaidRepeat is not { Width: { } repeat } laid
        )
        {
            return null;
        }

        Length usable = fabric.UsableWidth,
            most = widest - 2 * seam,
            length = front.To - front.From;
        if (laid.IsUnknownAcross)
        {
            return length > most ? null : new FrontRoom([], Length.Max(most - repeat.RoundUpTo(step), length));
        }

        var windows = ImmutableArray.CreateBuilder<(Length From, Length To)>();
        // Rounding up to the step moves a cut line by half of it at most.
        Length allowance = seam + step.HalfUp(),
            first = Length.FromNanometres((laid.MotifX ?? Length.Zero).Nanometres % repeat.Nanometres);
        for (Length motif = first; motif <= usable; motif += repeat)
        {
            (Length From, Length To) window = (match.X - motif + allowance, match.X + usable - motif - allowance);
            // What the front alone is rounded by is known.
            Length cut = (length + 2 * seam).RoundUpTo(step),
                left = match.X - front.From + seam + (cut - length - 2 * seam).HalfUp();
            if (left <= motif && motif - left + cut <= usable)
            {
                windows.Add((Length.Min(window.From, front.From), Length.Max(window.To, front.To)));
            }
        }

        return windows.Count == 0 ? null : new FrontRoom(windows.ToImmutable(), most);
    }

    /// <summary>The same, for a strip that starts further to the left.</summary>
    /// <param name="by">How much further, at least zero.</param>
    public FrontRoom Moved(Length by) => new([.. _windows.Select(window => (window.From + by, window.To + by))], _most);

    /// <summary>Whether the piece over the front is matched.</summary>
    /// <param name="from">Where it starts along the strip.</param>
    /// <param name="to">Where it ends; the front is between the two.</param>
    public bool Holds(Length from, Length to) =>
        to - from <= _most && (_windows.IsEmpty || _windows.Any(window => window.From <= from && to <= window.To));

    /// <summary>How far a piece may reach beyond both ends of the front.</summary>
    /// <param name="from">Where the front starts along the strip.</param>
    /// <param name="to">Where it ends.</param>
    /// <returns>At least zero.</returns>
    public Length Reach(Length from, Length to)
    {
        Length most = Length.FromNanometres((_most - (to - from)).Nanometres / 2);
        return _windows.IsEmpty
            ? most
            : Length.Min(most, _windows.Select(window => Length.Min(from - window.From, window.To - to)).Aggregate(Length.Max));
    }

    /// <summary>Where a piece over the front may end, at most, if it is the strip's first or its last.</summary>
    /// <param name="total">Finished length of the strip.</param>
    public IEnumerable<Length> Ends(Length total) =>
        _windows.IsEmpty ? [_most, total - _most] : _windows.SelectMany(window => new[] { window.From, window.To });
}
