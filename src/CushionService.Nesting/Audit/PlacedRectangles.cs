using System.Collections.Immutable;

namespace CushionService.Nesting.Audit;

/// <summary>Reads placements back into rectangles, and checks turns on the way.</summary>
internal static class PlacedRectangles
{
    /// <summary>The rectangle that each placement covers, in the same order.</summary>
    /// <exception cref="LayoutAuditException">A placement names no piece, or turns one as it may not be turned.</exception>
    /// <param name="pieces">The problem's pieces.</param>
    /// <param name="placements">The layout's placements.</param>
    public static GridRectangle[] Of(ImmutableArray<NestingPiece> pieces, ImmutableArray<Placement> placements)
    {
        var rectangles = new GridRectangle[placements.Length];
        for (var index = 0; index < placements.Length; index++)
        {
            var placement = placements[index];
            if (placement.Piece < 0 || placement.Piece >= pieces.Length)
            {
                throw new LayoutAuditException($"A placement names no piece: {placement}.");
            }

            var piece = pieces[placement.Piece];
            bool allowed = placement.Turn switch
            {
                0 => true,
                180 => piece.Rotations != Rotations.None,
                90 or 270 => piece.Rotations == Rotations.QuarterTurns,
                _ => false,
            };
            if (!allowed)
            {
                throw new LayoutAuditException($"A copy is turned as its piece does not allow: {placement}.");
            }

            bool upright = placement.Turn is 0 or 180;
            rectangles[index] = new GridRectangle(
                placement.X,
                placement.Y,
                upright ? piece.Width : piece.Length,
                upright ? piece.Length : piece.Width
            );
        }

        return rectangles;
    }
}
