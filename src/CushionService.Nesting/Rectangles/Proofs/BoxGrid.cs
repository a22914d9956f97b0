using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>The copies in whole multiples of the greatest common divisor of their extents, where the strip is then narrow enough
/// for tables over its width.</summary>
internal sealed class BoxGrid
{
    // Tables over the width and the length stay within a processor's cache.
    private const int MostUnits = 4096;

    /// <summary>Finds the units: one each way, or one for both where a kind may turn.</summary>
    /// <param name="set">All copies.</param>
    public BoxGrid(RectangleSet set)
    {
        Set = set;
        bool turns = set.MayTurn;
        for (var kind = 0; kind < set.Kinds; kind++)
        {
            UnitX = Divisors.Greatest(UnitX, set.Across[kind]);
            UnitY = Divisors.Greatest(UnitY, set.Along[kind]);
        }

        if (turns)
        {
            UnitX = UnitY = Divisors.Greatest(UnitX, UnitY);
        }

        IsFine = set.Width / UnitX <= MostUnits;
        Width = IsFine ? (int)(set.Width / UnitX) : 0;
        Across = IsFine ? [.. set.Across.Select(extent => (int)Math.Min(extent / UnitX, int.MaxValue))] : [];
        Along = IsFine ? [.. set.Along.Select(extent => (int)Math.Min(extent / UnitY, int.MaxValue))] : [];
    }

    /// <summary>The copies.</summary>
    public RectangleSet Set { get; }

    /// <summary>Whether tables over the width are small enough; nothing else is set when not.</summary>
    public bool IsFine { get; }

    /// <summary>Grid units in a unit across the strip.</summary>
    public long UnitX { get; }

    /// <summary>Grid units in a unit along the strip.</summary>
    public long UnitY { get; }

    /// <summary>Width of the strip in units, rounded down: no edge of a layout that is pushed left lies
    /// between units.</summary>
    public int Width { get; }

    /// <summary>Extent of each kind across the strip, in units.</summary>
    public int[] Across { get; }

    /// <summary>Extent of each kind along the strip, in units.</summary>
    public int[] Along { get; }

    /// <summary>The length in whole units; null when it is too long for tables.</summary>
    /// <param name="length">In grid units; rounded down, as the width is.</param>
    public int? Height(long length) => length / UnitY <= MostUnits ? (int)(length / UnitY) : null;

    /// <summary>Whether every kind fits a box of that many units in some turn.</summary>
    /// <param name="height">In units along the strip.</param>
    public bool EachFits(int height)
    {
        for (var kind = 0; kind < Set.Kinds; kind++)
        {
            bool upright = Across[kind] <= Width && Along[kind] <= height;
            bool turned = Set.Turns[kind] && Along[kind] <= Width && Across[kind] <= height;
            if (!upright && !turned)
            {
                return false;
            }
        }

        return true;
    }
}
