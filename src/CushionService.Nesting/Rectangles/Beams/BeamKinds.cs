using CushionService.Nesting.Rectangles.Proofs;
using CushionService.Nesting.Rectangles.Skylines;

namespace CushionService.Nesting.Rectangles.Beams;

/// <summary>The copies as beams see them: in whole multiples of a common unit where the strip is narrow enough for tables over its width,
/// else in grid units.</summary>
internal sealed class BeamKinds
{
    // What the longer side adds to how hard a rectangle is to lay late, beside its area: a long strip has little area, and yet few
    // gaps that it fits.
    private const double LongSide = 0.15;
    private const double LongSidePower = 1.5;

    // Made when a beam first asks for them.
    private BeamWays? _upright;
    private BeamWays? _sideways;

    /// <summary>Finds the units.</summary>
    /// <param name="set">All copies.</param>
    public BeamKinds(RectangleSet set)
    {
        Set = set;
        Grid = new BoxGrid(set);
        (UnitX, UnitY) = Grid.IsFine ? (Grid.UnitX, Grid.UnitY) : (1, 1);
        Across = Array.ConvertAll(set.Across, extent => extent / UnitX);
        Along = Array.ConvertAll(set.Along, extent => extent / UnitY);
        Width = set.Width / UnitX;
        MayTurn = set.MayTurn;
        Hardness = new double[set.Kinds];
        double meanArea = (double)set.Area / set.Copies;
        for (var kind = 0; kind < set.Kinds; kind++)
        {
            Area += Across[kind] * Along[kind] * set.Count[kind];
            // In grid units, which are the same both ways.
            double longer = Math.Max(set.Across[kind], set.Along[kind]) / Math.Sqrt(meanArea);
            double area = set.Across[kind] * set.Along[kind] / meanArea;
            Hardness[kind] = (1 - LongSide) * area + LongSide * Math.Pow(longer, LongSidePower);
            AllHardness += Hardness[kind] * set.Count[kind];
        }

        MeanArea = (double)Area / set.Copies;
    }

    /// <summary>The copies in grid units.</summary>
    public RectangleSet Set { get; }

    /// <summary>The units, and whether the strip is narrow enough for tables.</summary>
    public BoxGrid Grid { get; }

    /// <summary>Grid units in a unit across the strip.</summary>
    public long UnitX { get; }

    /// <summary>Grid units in a unit along the strip.</summary>
    public long UnitY { get; }

    /// <summary>Width of the strip in units, rounded down.</summary>
    public long Width { get; }

    /// <summary>Extent of each kind across the strip, in units.</summary>
    public long[] Across { get; }

    /// <summary>Extent of each kind along the strip, in units.</summary>
    public long[] Along { get; }

    /// <summary>Area of all copies, in square units.</summary>
    public long Area { get; }

    /// <summary>The least length, in grid units, of a box that has the area of all copies in whole units.</summary>
    public long ShortestByArea => (Area + Width - 1) / Width * UnitY;

    /// <summary>The ways to lay a copy in a box.</summary>
    /// <param name="sideways">Whether the box's axes are exchanged.</param>
    public BeamWays Ways(bool sideways) =>
        sideways ? _sideways ??= new BeamWays(Along, Across, Set.Turns) : _upright ??= new BeamWays(Across, Along, Set.Turns);

    /// <summary>Area of an average copy.</summary>
    public double MeanArea { get; }

    /// <summary>Whether any kind may be turned.</summary>
    public bool MayTurn { get; }

    /// <summary>How hard a copy of each kind is to lay late: 1 for an average square.</summary>
    public double[] Hardness { get; }

    /// <summary>The same of all copies together.</summary>
    public double AllHardness { get; }
}
