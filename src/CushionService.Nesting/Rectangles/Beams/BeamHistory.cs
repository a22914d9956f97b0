using System.Diagnostics;
using CushionService.Nesting.Rectangles.Skylines;

namespace CushionService.Nesting.Rectangles.Beams;

/// <summary>How each state of each depth was made, so that a finished layout can be read back.</summary>
/// <param name="set">All copies.</param>
/// <param name="states">The most states of a depth.</param>
internal sealed class BeamHistory(RectangleSet set, int states)
{
    private readonly Step[] _steps = new Step[set.Copies * states];

    // Of each kind, the copy that is read back next.
    private readonly int[] _next = new int[set.Kinds];

    /// <summary>Notes that a state follows from a parent by laying a copy of a kind.</summary>
    /// <param name="depth">How many copies were laid before.</param>
    /// <param name="state">The state that follows, from 0.</param>
    /// <param name="parent">The state of the depth before.</param>
    /// <param name="kind">The kind laid.</param>
    /// <param name="turned">Whether its sides are exchanged.</param>
    /// <param name="x">Its left edge in the box of the search.</param>
    /// <param name="y">Its lower edge.</param>
    public void Note(int depth, int state, int parent, int kind, bool turned, long x, long y) =>
        _steps[depth * states + state] = new Step(parent, kind, turned, x, y);

    /// <summary>Notes that a state was made as another one of its depth did.</summary>
    /// <param name="depth">The depth.</param>
    /// <param name="state">The new state.</param>
    /// <param name="twin">The state that it is like.</param>
    public void NoteTwin(int depth, int state, int twin) => _steps[depth * states + state] = _steps[depth * states + twin];

    /// <summary>Reads the first layout of the last depth; sideways, the box's axes are exchanged.</summary>
    /// <param name="sideways">Whether the box's axes were exchanged.</param>
    /// <param name="layout">Takes the places of all copies.</param>
    /// <param name="unitX">Grid units in a unit of the search across the strip.</param>
    /// <param name="unitY">Grid units in a unit along the strip.</param>
    public void Read(bool sideways, RectangleLayout layout, long unitX, long unitY)
    {
        for (int copy = set.Copies - 1; copy >= 0; copy--)
        {
            _next[set.KindOf[copy]] = copy;
        }

        var state = 0;
        for (int depth = set.Copies - 1; depth >= 0; depth--)
        {
            var step = _steps[depth * states + state];
            int copy = _next[step.Kind]++;
            Debug.Assert(copy < set.Copies && set.KindOf[copy] == step.Kind, "A kind is laid more often than it has copies.");
            var (x, y) = sideways ? (step.Y, step.X) : (step.X, step.Y);
            layout.Put(copy, x * unitX, y * unitY, step.Turned);
            state = step.Parent;
        }
    }

    /// <summary>How a state was made: what was laid where, and on which state of the depth
    /// before.</summary>
    private readonly record struct Step(int Parent, int Kind, bool Turned, long X, long Y);
}
