using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Geometry;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Layouts;

/// <summary>The order in which pieces are searched: by what they are, the largest first. What is sold must not depend on the order in which
/// cushions were entered.</summary>
/// <param name="fabric">The fabric of the pieces.</param>
internal sealed class PieceOrder(FabricSpecification fabric) : IComparer<CutPiece>
{
    /// <summary>The pieces in that order; those that are the same to the search stay as they are given.</summary>
    /// <param name="pieces">Pieces of the fabric.</param>
    public CutPiece[] Of(IEnumerable<CutPiece> pieces) => [.. pieces.Order(this)];

    /// <summary>Placements in the order of the pieces as they were given.</summary>
    /// <param name="placements">Every copy of every piece.</param>
    /// <param name="given">The pieces.</param>
    public static ImmutableArray<LaidPiece> AsGiven(IEnumerable<LaidPiece> placements, IReadOnlyList<CutPiece> given)
    {
        var numbers = new Dictionary<CutPiece, int>(ReferenceEqualityComparer.Instance);
        for (var i = 0; i < given.Count; i++)
        {
            numbers[given[i]] = i;
        }

        return [.. placements.OrderBy(laid => numbers[laid.Piece])];
    }

    /// <inheritdoc/>
    public int Compare(CutPiece? x, CutPiece? y)
    {
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(y);
        int order = Box(y).CompareTo(Box(x));
        order = order != 0 ? order : y.Along.CompareTo(x.Along);
        order = order != 0 ? order : y.Quantity.CompareTo(x.Quantity);
        order = order != 0 ? order : x.Rotations.CompareTo(y.Rotations);
        order = order != 0 ? order : x.IsRailroaded.CompareTo(y.IsRailroaded);
        order = order != 0 ? order : Compare(MotifMatch.Corner(x, fabric, default), MotifMatch.Corner(y, fabric, default));
        return order != 0 ? order : Compare(x.Outline, y.Outline);
    }

    private static Int128 Box(CutPiece piece) => (Int128)piece.Across.Nanometres * piece.Along.Nanometres;

    private static int Compare(ImmutableArray<Point> one, ImmutableArray<Point> other)
    {
        int order = one.Length.CompareTo(other.Length);
        for (var i = 0; order == 0 && i < one.Length; i++)
        {
            order = Compare(one[i], other[i]);
        }

        return order;
    }

    // What is not matched comes after what is.
    private static int Compare(Point? one, Point? other) =>
        one is { } at && other is { } to ? (at.X, at.Y).CompareTo((to.X, to.Y)) : (one is null).CompareTo(other is null);
}
