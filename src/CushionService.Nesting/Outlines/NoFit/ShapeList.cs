using CushionService.Nesting.Search;

namespace CushionService.Nesting.Outlines.NoFit;

/// <summary>Distinct outlines, numbered from 0. Equal outlines get one number: a hash says which to compare, and their corners
/// decide.</summary>
internal sealed class ShapeList
{
    private readonly List<OutlineShape> _shapes = [];
    private readonly Dictionary<int, List<int>> _byHash = [];

    /// <summary>Number of shapes.</summary>
    public int Count => _shapes.Count;

    /// <summary>A shape by its number.</summary>
    public OutlineShape this[int shape] => _shapes[shape];

    /// <summary>The largest step of which every corner of every shape is a multiple, in grid units; 0 when there are no shapes.</summary>
    public long CommonStep
    {
        get
        {
            long step = 0;
            foreach (var corner in _shapes.SelectMany(shape => shape.Corners))
            {
                step = Divisors.Greatest(Divisors.Greatest(step, corner.X), corner.Y);
            }

            return step;
        }
    }

    /// <summary>The number of an outline, and whether it is a new one.</summary>
    public (int Number, bool IsNew) Add(OutlineShape shape)
    {
        if (!_byHash.TryGetValue(shape.Hash, out var same))
        {
            _byHash[shape.Hash] = same = [];
        }

        foreach (var known in same)
        {
            if (shape.IsSameAs(_shapes[known]))
            {
                return (known, false);
            }
        }

        same.Add(_shapes.Count);
        _shapes.Add(shape);
        return (_shapes.Count - 1, true);
    }
}
