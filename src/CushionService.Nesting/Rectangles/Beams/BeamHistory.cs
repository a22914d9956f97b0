using System.Diagnostics;
using CushionService.Nesting.Rectangles.Skylines;

namespace CushionService.Nesting.Rectangles.Beams;

/// <summary>How each state of each depth was made, so that a finished layout can be read back.</summary>
internal sealed class BeamHistory(RectangleSet set, int states)
{
    private readonly Step[] _steps = new Step[set.Copies * states];
    private readonly int[] _next = new int[set.Kinds];

    /// <summary>Notes that a state follows from a parent by laying a copy of a kind.</summary>
    public void Note(int depth, int state, int parent, int kind, bool turned, long x, long y) =>
        _steps[depth * states + state] = new Step(parent, kind, turned, x, y);

    /// <summary>Notes that a state was made as another one of its depth did.</summary>
    public void NoteTwin(int depth, int state, int twin) => _steps[depth * states + state] = _steps[depth * states + twin];

    /// <summary>Reads the first layout of the last depth; sideways, the box's axes are exchanged.</summary>
    public void Read(bool sideways, RectangleLayout layout)
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
            layout.Put(copy, x, y, step.Turned);
            state = step.Parent;
        }
    }

    private readonly record struct Step(int Parent, int Kind, bool Turned, long X, long Y);
}
