namespace CushionService.Nesting.Rectangles.Beams;

/// <summary>Closes gaps of partial layouts: what nothing that is left can use is lost, and a layout that has lost more than the box can
/// spare ends there.</summary>
/// <param name="kinds">All copies.</param>
internal sealed class BeamGaps(BeamKinds kinds)
{
    private readonly BeamLosses _losses = new(kinds.Set.Copies);
    private BeamWays _ways = kinds.Ways(sideways: false);
    private long _height;
    private long _slack;

    /// <summary>Prepares a run.</summary>
    /// <param name="sideways">Whether the box's axes are exchanged.</param>
    /// <param name="height">Height of the box as the run sees it, in the kinds' units.</param>
    /// <param name="slack">Area that may be lost: the box less all copies, at least 0.</param>
    public void Begin(bool sideways, long height, long slack)
    {
        (_ways, _height, _slack) = (kinds.Ways(sideways), height, slack);
    }

    /// <summary>Closes the lowest gap of a state, though something may fit it.</summary>
    public void CloseLowest(BeamLayer layer, int state) => layer.Raise(state, layer.Gap[state], _height);

    /// <summary>Closes the gaps that no copy fits, and raises columns and counts rows that the copies left cannot fill, where their sums
    /// are known; false when that loses too much.</summary>
    /// <param name="layer">Holds the state.</param>
    /// <param name="state">Which one.</param>
    public bool Settle(BeamLayer layer, int state)
    {
        if (layer.Sums is not null)
        {
            BeamLosses.RaiseColumns(layer, state, _height);
        }

        while (layer.Remaining[state] > 0)
        {
            int gap = layer.FindGap(state);
            int at = state * layer.Stride + gap;
            if (_ways.AnyFits(layer.OpenOf(state), layer.X[at + 1] - layer.X[at], _height - layer.Y[at]))
            {
                break;
            }

            if (layer.Segments[state] == 1)
            {
                return false;
            }

            layer.Raise(state, gap, _height);
        }

        layer.RowLoss[state] = layer.Sums is not null && layer.Waste[state] <= _slack ? _losses.OfRows(layer, state, _height) : 0;
        return layer.Waste[state] + layer.RowLoss[state] <= _slack;
    }
}
