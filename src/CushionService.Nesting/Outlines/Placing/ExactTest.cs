using CushionService.Nesting.Outlines.NoFit;

namespace CushionService.Nesting.Outlines.Placing;

/// <summary>Asks, pair by pair, whether an arrangement that the search takes for free of overlaps is so in whole numbers.</summary>
internal sealed class ExactTest
{
    private readonly Copies _copies;
    private readonly OutlineOverlap _overlap = new();
    private readonly GridPoint[] _moved;

    public ExactTest(Copies copies)
    {
        _copies = copies;
        var most = 0;
        for (var shape = 0; shape < copies.Book.Count; shape++)
        {
            most = Math.Max(most, copies.Book[shape].Corners.Length);
        }

        _moved = new GridPoint[most];
    }

    public bool IsApart(Arrangement arrangement)
    {
        for (var copy = 0; copy < _copies.Count; copy++)
        {
            for (var other = copy + 1; other < arrangement.All; other++)
            {
                if (Meet(arrangement, copy, other))
                {
                    return false;
                }
            }
        }

        return true;
    }

    private bool Meet(Arrangement arrangement, int copy, int other)
    {
        var (one, two) = (_copies.Book[arrangement.Shape[copy]], _copies.Book[arrangement.Shape[other]]);
        var dx = (long)(arrangement.X[other] - arrangement.X[copy]);
        var dy = (long)(arrangement.Y[other] - arrangement.Y[copy]);
        if (dx >= one.Width || -dx >= two.Width || dy >= one.Length || -dy >= two.Length)
        {
            return false;
        }

        for (var corner = 0; corner < two.Corners.Length; corner++)
        {
            _moved[corner] = new GridPoint(two.Corners[corner].X + dx, two.Corners[corner].Y + dy);
        }

        return _overlap.InteriorsMeet(one.Corners, _moved.AsSpan(0, two.Corners.Length));
    }
}
