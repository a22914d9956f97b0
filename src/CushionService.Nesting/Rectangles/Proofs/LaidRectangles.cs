using System.Diagnostics;
using CushionService.Nesting.Rectangles.Skylines;

namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>The rectangles that a depth-first search has laid, the last on top.</summary>
/// <param name="most">How many there can be.</param>
internal sealed class LaidRectangles(int most)
{
    // A stack: what was laid first is at the bottom.
    private readonly (int Kind, int X, int Y, bool Turned)[] _laid = new (int, int, int, bool)[most];

    /// <summary>How many are laid.</summary>
    public int Count { get; private set; }

    /// <summary>Takes all back.</summary>
    public void Clear() => Count = 0;

    /// <summary>Lays one: its kind, its lower left corner in the search's box, and whether its sides are exchanged.</summary>
    /// <param name="kind">Which kind.</param>
    /// <param name="x">Left edge, in units of the box.</param>
    /// <param name="y">Lower edge.</param>
    /// <param name="turned">Whether its sides are exchanged.</param>
    public void Push(int kind, int x, int y, bool turned) => _laid[Count++] = (kind, x, y, turned);

    /// <summary>Takes the last one back.</summary>
    public void Pop()
    {
        Debug.Assert(Count > 0, "Nothing is laid that could be taken back.");
        Count--;
    }

    /// <summary>Writes all copies into a layout, in grid units.</summary>
    /// <param name="grid">The copies' grid.</param>
    /// <param name="sideways">Whether the search's box has its axes exchanged.</param>
    /// <param name="layout">Takes the places.</param>
    public void Read(BoxGrid grid, bool sideways, RectangleLayout layout)
    {
        Debug.Assert(Count == grid.Set.Copies, "Not all copies are laid.");
        var next = new int[grid.Set.Kinds];
        for (int copy = grid.Set.Copies - 1; copy >= 0; copy--)
        {
            next[grid.Set.KindOf[copy]] = copy;
        }

        foreach (var (kind, x, y, turned) in _laid.AsSpan(0, Count))
        {
            var (across, along) = sideways ? (y, x) : (x, y);
            layout.Put(next[kind]++, across * grid.UnitX, along * grid.UnitY, turned);
        }
    }
}
