using CushionService.Contract.Answers;
using CushionService.Nesting;

namespace CushionService.Tests.Documents;

/// <summary>Lays pieces in level rows, tallest first: a layout to draw, not one to buy by.</summary>
internal static class Shelves
{
    public static LayoutAnswer Lay(string fabric, double width, IEnumerable<PieceAnswer> pieces, Random? turns = null)
    {
        (double x, double y, double shelf) = (0, 0, 0);
        List<PlacementAnswer> placements = [];
        var copies = pieces
            .SelectMany(piece =>
                Enumerable.Range(1, piece.Quantity).Select(copy => (Piece: piece, Copy: copy, Turn: Turn(piece, width, turns)))
            )
            .OrderByDescending(copy => copy.Turn % 180 == 0 ? copy.Piece.Length : copy.Piece.Width);
        foreach ((PieceAnswer piece, int copy, int turn) in copies)
        {
            (double across, double along) = turn % 180 == 0 ? (piece.Width, piece.Length) : (piece.Length, piece.Width);
            if (x > 0 && x + across > width)
            {
                (x, y, shelf) = (0, y + shelf, 0);
            }

            placements.Add(
                new PlacementAnswer
                {
                    Piece = piece.Id,
                    Copy = copy,
                    X = x,
                    Y = y,
                    Rotation = turn,
                    Width = across,
                    Length = along,
                }
            );
            (x, shelf) = (x + across, Math.Max(shelf, along));
        }

        double length = y + shelf;
        double covered = placements.Sum(placement => placement.Width * placement.Length);
        return new LayoutAnswer
        {
            Fabric = fabric,
            Width = width,
            Length = length,
            LowerBound = Math.Round(covered / width, 2),
            ProvenMinimal = false,
            Proof = ProofKind.None,
            ProofBecause = "",
            Used = Math.Round(covered / (width * length), 4),
            Placements = placements,
        };
    }

    private static int Turn(PieceAnswer piece, double width, Random? turns)
    {
        int turn = 90 * (turns?.Next(4) ?? 0);
        return piece.Rotation switch
        {
            Rotations.None => 0,
            Rotations.HalfTurn => turn / 180 * 180,
            _ => turn % 180 != 0 && piece.Length > width ? 0 : turn,
        };
    }
}
