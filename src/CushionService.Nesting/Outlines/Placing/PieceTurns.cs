using CushionService.Nesting.Outlines.NoFit;

namespace CushionService.Nesting.Outlines.Placing;

/// <summary>The distinct ways in which a piece may lie. A disc that may turn has one: equal outlines are one shape.</summary>
internal static class PieceTurns
{
    /// <summary>Adds a piece's outlines to the book, one for each allowed turn that fits the strip.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="family">A number that all turns of this outline share.</param>
    /// <param name="width">Width of the strip, in grid units.</param>
    /// <param name="hulls">Whether the outline counts as its convex hull.</param>
    /// <param name="book">Takes the outlines.</param>
    /// <returns>The distinct turns; and for each quarter turn the index of the turn that looks the same, −1 where it is not allowed or does
    /// not fit.</returns>
    public static ((int Shape, int Degrees)[] Turns, int[] ByQuarter) Of(
        NestingPiece piece,
        int family,
        long width,
        bool hulls,
        ShapeBook book
    )
    {
        ReadOnlySpan<int> allowed = piece.Rotations switch
        {
            Rotations.None => [0],
            Rotations.HalfTurn => [0, 180],
            _ => [0, 90, 180, 270],
        };
        var turns = new List<(int Shape, int Degrees)>();
        int[] byQuarter = [-1, -1, -1, -1];
        foreach (var degrees in allowed)
        {
            var shape = OutlineShape.Of(piece, degrees);
            shape = hulls ? shape.Hull() : shape;
            if (shape.Width > width)
            {
                continue;
            }

            var number = book.Add(shape, family, degrees / 90);
            var known = turns.FindIndex(turn => turn.Shape == number);
            byQuarter[degrees / 90] = known < 0 ? turns.Count : known;
            if (known < 0)
            {
                turns.Add((number, degrees));
            }
        }

        return ([.. turns], byQuarter);
    }
}
