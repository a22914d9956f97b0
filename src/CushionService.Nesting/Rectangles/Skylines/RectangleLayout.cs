using System.Collections.Immutable;
using System.Diagnostics;

namespace CushionService.Nesting.Rectangles.Skylines;

/// <summary>A place for every copy of a set. A search owns one and writes into it; what it passes on is copied, so that no two searches
/// write to the same. It is sized once and allocates nothing afterwards.</summary>
/// <param name="set">The copies.</param>
internal sealed class RectangleLayout(RectangleSet set)
{
    private readonly RectanglePlace[] _places = new RectanglePlace[set.Copies];

    /// <summary>Place of a copy.</summary>
    public RectanglePlace this[int copy] => _places[copy];

    /// <summary>Lays a copy.</summary>
    /// <param name="copy">Index into the set's copies.</param>
    /// <param name="x">Left edge, in grid units, at least 0.</param>
    /// <param name="y">Lower edge, in grid units, at least 0.</param>
    /// <param name="turned">Whether its sides are exchanged; only where its kind may turn.</param>
    public void Put(int copy, long x, long y, bool turned)
    {
        Debug.Assert(x >= 0 && y >= 0, "A copy lies outside the strip.");
        Debug.Assert(!turned || set.Turns[set.KindOf[copy]], "A copy that may not turn is turned.");
        _places[copy] = new RectanglePlace(x, y, turned);
    }

    /// <summary>Takes over all places of a layout of the same set.</summary>
    public void CopyFrom(RectangleLayout other) => other._places.CopyTo(_places, 0);

    /// <summary>Extent of a copy along the strip as it lies, in grid units.</summary>
    public long Along(int copy) => _places[copy].Turned ? set.Across[set.KindOf[copy]] : set.Along[set.KindOf[copy]];

    /// <summary>Extent of a copy across the strip as it lies, in grid units.</summary>
    public long Across(int copy) => _places[copy].Turned ? set.Along[set.KindOf[copy]] : set.Across[set.KindOf[copy]];

    /// <summary>Where the last copy ends, in grid units.</summary>
    public long End()
    {
        long end = 0;
        for (var copy = 0; copy < _places.Length; copy++)
        {
            end = Math.Max(end, _places[copy].Y + Along(copy));
        }

        Debug.Assert(IsWithin(end), "A copy sticks out of the strip.");
        return end;
    }

    /// <summary>All places, in the caller's terms.</summary>
    public ImmutableArray<Placement> Placements()
    {
        var placements = ImmutableArray.CreateBuilder<Placement>(_places.Length);
        for (var copy = 0; copy < _places.Length; copy++)
        {
            placements.Add(set.Place(copy, _places[copy]));
        }

        return placements.MoveToImmutable();
    }

    /// <summary>Whether all copies lie within the set's strip up to a length, and their areas fit it.</summary>
    private bool IsWithin(long length)
    {
        for (var copy = 0; copy < _places.Length; copy++)
        {
            if (_places[copy].X + Across(copy) > set.Width || _places[copy].Y + Along(copy) > length)
            {
                return false;
            }
        }

        return (Int128)length * set.Width >= set.Area;
    }
}
