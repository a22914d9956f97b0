using System.Diagnostics;
using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Beams;

/// <summary>Looks for a layout of all copies in a box, many partial layouts abreast (beam search: Ow and Morton 1988). Each lays one
/// rectangle on the lowest gap of its skyline; of all that follow, the best by a guide go on, few from each parent, so that they
/// stay different. A partial layout ends once it has lost more area than the box can spare.</summary>
internal sealed class BeamSearch
{
    // What a state takes in steps, as measured: to be weighed, ordered, made and settled; and how many of its kinds and segments are copied
    // in the time of a step.
    private const int StepsOfState = 42;
    private const int CopiedPerStep = 5;

    // Children of one state that go on, so that one good state does not fill the layer.
    private const int KeptOfParent = 2;
    private readonly RectangleSet _set;
    private readonly BeamKinds _kinds;
    private readonly StepBudget _budget;
    private readonly int _states;
    private readonly BeamLayer[] _layers;
    private readonly BeamHistory _history;
    private readonly StateMarks _marks;
    private readonly BeamWeighing _weighing;
    private readonly BeamGaps _gaps;
    private readonly int[] _children;
    private BeamWays _ways;
    private bool _givesUp;
    private int _abreast;

    /// <summary>Sizes everything once.</summary>
    /// <param name="kinds">All copies.</param>
    /// <param name="states">The most partial layouts abreast.</param>
    /// <param name="longest">A length that no box is longer than, in grid units; null where no run looks ahead.</param>
    /// <param name="budget">Pays for the steps.</param>
    public BeamSearch(BeamKinds kinds, int states, long? longest, StepBudget budget)
    {
        var set = kinds.Set;
        (_set, _kinds, _states, _budget) = (set, kinds, states, budget);
        _ways = _kinds.Ways(sideways: false);
        _layers = [Layer(), Layer()];
        _history = new BeamHistory(set, states);
        _marks = new StateMarks(states, set.Kinds);
        _weighing = new BeamWeighing(_kinds, states, budget);
        _gaps = new BeamGaps(_kinds);
        _children = new int[states];

        BeamLayer Layer() =>
            new(states, set.Copies, set.Kinds, _ways.Words, longest is { } most ? new BeamSums(kinds, most / kinds.UnitY, states) : null);
    }

    /// <summary>How many partial layouts can go abreast.</summary>
    public int States => _states;

    /// <summary>Searches once, along the box or across it.</summary>
    /// <param name="abreast">How many partial layouts go abreast, at most <see cref="States"/>.</param>
    /// <param name="length">Length of the box, in grid units.</param>
    /// <param name="sideways">Whether the box's axes are exchanged, so that it is filled from its left wall.</param>
    /// <param name="looksAhead">Whether the run counts what the copies left add up to; only where a longest length was given.</param>
    /// <param name="guide">What looks good.</param>
    /// <param name="random">Draws the likings of the kinds.</param>
    /// <param name="layout">Takes the layout, when one is found.</param>
    /// <returns>Whether a layout was found.</returns>
    public bool Run(int abreast, long length, bool sideways, bool looksAhead, BeamGuide guide, ref Xorshift random, RectangleLayout layout)
    {
        _abreast = abreast;
        _ways = _kinds.Ways(sideways);
        long units = length / _kinds.UnitY;
        var (width, height) = sideways ? (units, _kinds.Width) : (_kinds.Width, units);
        long slack = width * height - _kinds.Area;
        _givesUp = guide.GivesUp;
        // Less area than all copies have: nothing is to be found.
        if (slack < 0)
        {
            return false;
        }

        _gaps.Begin(sideways, height, slack);
        _weighing.Begin(sideways, height, slack, looksAhead, guide, ref random);
        var (now, next) = (_layers[0], _layers[1]);
        next.Begin(_kinds, width, sideways, looksAhead);
        now.Begin(_kinds, width, sideways, looksAhead);
        var states = 1;
        var laid = 0;
        for (; laid < _set.Copies && states > 0 && !(_set.Copies > BoxBeams.MostCopies && _budget.Exhausted); laid++)
        {
            _weighing.Candidates.Clear();
            for (var state = 0; state < states; state++)
            {
                _weighing.Weigh(now, state);
            }

            _weighing.Candidates.Sort();
            states = Advance(now, next, laid);
            (now, next) = (next, now);
        }

        bool complete = states > 0 && laid == _set.Copies;
        if (complete)
        {
            _history.Read(sideways, layout, _kinds.UnitX, _kinds.UnitY);
            Debug.Assert(layout.End() <= length, "A beam ends above the box.");
        }

        return complete;
    }

    /// <summary>Makes the next layer from the best candidates; returns its number of states.</summary>
    /// <param name="now">The layer of the parents.</param>
    /// <param name="next">The layer that is written.</param>
    /// <param name="depth">How many copies the parents have laid.</param>
    private int Advance(BeamLayer now, BeamLayer next, int depth)
    {
        Array.Clear(_children);
        _marks.Clear();
        var states = 0;
        var candidates = _weighing.Candidates;
        for (var index = 0; index < candidates.Count && states < _abreast; index++)
        {
            var (parent, move) = candidates[index];
            if (_children[parent] == KeptOfParent || !Follow(now, parent, BeamMove.Of(move), next, states, depth))
            {
                continue;
            }

            _children[parent]++;
            states++;
            if (_givesUp && states < _abreast && GiveUp(next, states - 1, states, depth))
            {
                states++;
            }
        }

        return states;
    }

    /// <summary>Makes one state of the next layer; false when it has lost too much or is there
    /// already.</summary>
    private bool Follow(BeamLayer now, int parent, BeamMove move, BeamLayer next, int state, int depth)
    {
        var (way, atLeft) = move;
        int kind = _ways.Kind[way];
        var (across, along) = (_ways.Across[way], _ways.Along[way]);
        int gap = now.Gap[parent];
        int at = parent * now.Stride + gap;
        next.Lay(state, now, parent, gap, across, along, atLeft);
        next.Hardness[state] = now.Hardness[parent] - _kinds.Hardness[kind];
        next.LeftHash[state] = now.LeftHash[parent] - _marks.Salt(kind);
        next.Sums?.Write(state, now.Sums!, parent, kind);
        _budget.Spend(StepsOf(next, state));
        var left = next.Left.AsSpan(state * _set.Kinds, _set.Kinds);
        now.Left.AsSpan(parent * _set.Kinds, _set.Kinds).CopyTo(left);
        left[kind]--;
        Debug.Assert(left[kind] >= 0, "A copy is laid that is not left.");
        now.OpenOf(parent).CopyTo(next.OpenOf(state));
        if (left[kind] == 0)
        {
            _ways.Remove(next.OpenOf(state), kind);
        }

        if (!_gaps.Settle(next, state) || !_marks.Add(next, state))
        {
            return false;
        }

        _history.Note(depth, state, parent, kind, _ways.Turned[way], atLeft ? now.X[at] : now.X[at + 1] - across, now.Y[at]);
        return true;
    }

    /// <summary>Steps of making a state; where a run looks ahead, of writing its sums too, and of asking them for each segment's row and
    /// column.</summary>
    private int StepsOf(BeamLayer layer, int state) =>
        StepsOfMaking(_set.Kinds, layer.Segments[state]) + (layer.Sums is { } sums ? sums.StepsToWrite + 3 * layer.Segments[state] : 0);

    /// <summary>Steps of making a state without looking ahead.</summary>
    /// <param name="kinds">Kinds of the order.</param>
    /// <param name="segments">Segments of its skyline.</param>
    public static int StepsOfMaking(int kinds, int segments) => StepsOfState + (2 * kinds + segments) / CopiedPerStep;

    /// <summary>Adds a state like another one, but for its gap, which is closed although something fits; false when that loses too
    /// much.</summary>
    /// <param name="layer">The layer that is being written.</param>
    /// <param name="like">The state that it is like.</param>
    /// <param name="state">The state that is added.</param>
    /// <param name="depth">How many copies the parents have laid.</param>
    private bool GiveUp(BeamLayer layer, int like, int state, int depth)
    {
        if (layer.Segments[like] == 1 || layer.Remaining[like] == 0)
        {
            return false;
        }

        layer.Copy(state, like);
        _budget.Spend(StepsOf(layer, state));
        _gaps.CloseLowest(layer, state);
        if (!_gaps.Settle(layer, state) || !_marks.Add(layer, state))
        {
            return false;
        }

        _history.NoteTwin(depth, state, like);
        return true;
    }
}
