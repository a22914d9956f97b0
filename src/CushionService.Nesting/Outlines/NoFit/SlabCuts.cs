namespace CushionService.Nesting.Outlines.NoFit;

/// <summary>Finds where lines cross each other between two events of a sweep: there the order across changes, and a new slab must
/// begin.</summary>
/// <param name="cancellation">Observed for every line: jagged outlines have very many.</param>
internal sealed class SlabCuts(CancellationToken cancellation)
{
    private readonly List<double> _cuts = [];

    // The values of each line at both ends of the slab, in the order of the first.
    private readonly List<(double AtStart, double AtEnd)> _order = [];

    /// <summary>The ends of the slab and every crossing within: lines that an insertion sort from their order at the start to that at the
    /// end carries past each other.</summary>
    /// <param name="active">Lines that reach from the start to the end.</param>
    /// <param name="start">Where the slab begins.</param>
    /// <param name="end">Where it ends.</param>
    /// <param name="tolerance">Rounding error that is taken for touching, grid units.</param>
    /// <returns>Ascending; valid until the next call.</returns>
    public List<double> Find(List<SweepLine> active, double start, double end, double tolerance)
    {
        _cuts.Clear();
        _cuts.Add(start);
        _order.Clear();
        foreach (var line in active)
        {
            _order.Add((line.At(start), line.At(end)));
        }

        _order.Sort();
        for (var index = 1; index < _order.Count; index++)
        {
            cancellation.ThrowIfCancellationRequested();
            var here = _order[index];
            var at = index;
            for (; at > 0 && _order[at - 1].AtEnd > here.AtEnd; at--)
            {
                _order[at] = _order[at - 1];
                var (atStart, atEnd) = (here.AtStart - _order[at].AtStart, here.AtEnd - _order[at].AtEnd);
                if (atStart > tolerance && atEnd < -tolerance)
                {
                    _cuts.Add(start + (end - start) * atStart / (atStart - atEnd));
                }
            }

            _order[at] = here;
        }

        _cuts.Sort();
        _cuts.Add(end);
        return _cuts;
    }
}
