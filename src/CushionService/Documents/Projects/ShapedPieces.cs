using CushionService.Contract.Answers;
using CushionService.Documents.CutSheets;
using CushionService.Documents.Drawings;
using CushionService.Documents.Sheets;
using CushionService.Engine.Messages;

namespace CushionService.Documents.Projects;

/// <summary>How the pieces that are no rectangles are drawn on the fabric: circles with a string, straight sides by their corners, other
/// curves from the true-size pattern.</summary>
internal static class ShapedPieces
{
    // Curves come as many short sides.
    private const int MostCorners = 12;

    // Of its width: what may be missing to a circle between the corners of its outline.
    private const double Round = 0.004;

    /// <summary>A line for each shape; null where all pieces are rectangles.</summary>
    public static Bullets? Of(Job job)
    {
        IGrouping<string, PieceAnswer>[] shapes =
        [
            .. job
                .Quote.Pieces.Where(piece => piece.Points is not null)
                .GroupBy(piece =>
                    IsCircle(piece) ? $"circle {piece.Width}"
                    : piece.Points!.Count > MostCorners ? ""
                    : string.Join(' ', piece.Points.Select(point => $"{point.X} {point.Y}"))
                ),
        ];
        return shapes.Length == 0 ? null : new Bullets([.. shapes.Select(same => (Run[])[new Run(job.Say(How(job, [.. same])))])], false);
    }

    private static Message How(Job job, PieceAnswer[] same)
    {
        string[] numbers = job.Numbers(same.Select(piece => piece.Id));
        PieceAnswer first = same[0];
        return IsCircle(first) ? ProjectTexts.Circles(numbers, job.Units.Text(first.Width), job.Units.Text(first.Width / 2))
            : first.Points!.Count > MostCorners ? ProjectTexts.Curved(numbers)
            : ProjectTexts.Corners(
                numbers,
                [.. first.Points.Select(point => DrawingTexts.Place(job.Units.Number(point.X), job.Units.Text(point.Y)))]
            );
    }

    private static bool IsCircle(PieceAnswer piece)
    {
        double radius = piece.Width / 2;
        return piece.Points!.Count > MostCorners
            && Math.Abs(piece.Width - piece.Length) < Round * radius
            && piece.Points.All(point =>
                Math.Abs(Math.Sqrt(Square(point.X - radius) + Square(point.Y - radius)) - radius) < Round * radius
            );

        static double Square(double value) => value * value;
    }
}
