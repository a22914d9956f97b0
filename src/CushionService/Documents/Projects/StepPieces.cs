using CushionService.Contract.Answers;
using CushionService.Documents.CutSheets;
using CushionService.Documents.Drawings;

namespace CushionService.Documents.Projects;

/// <summary>Draws the pieces that a step takes, by their numbers and to one scale, where there are few enough to tell apart.</summary>
internal static class StepPieces
{
    private const int Most = 4;
    private const double Width = 62;
    private const double Height = 34;
    private const double Gap = 3;
    private const double Thinnest = 3.5;
    private const double Type = 4;

    /// <summary>The drawing; null for a step that takes no pieces, or many.</summary>
    public static string? Draw(Job job, JobStep step)
    {
        PieceAnswer[] pieces = [.. step.Pieces.Select(id => job.Pieces[id].Piece)];
        if (pieces.Length is 0 or > Most)
        {
            return null;
        }

        // Strips lie on their side, one above the other.
        double[] across = [.. pieces.Select(piece => Math.Max(piece.Width, piece.Length))];
        double[] down = [.. pieces.Select(piece => Math.Min(piece.Width, piece.Length))];
        double room = Height - Gap * (pieces.Length - 1);
        double scale = Math.Min((Width - 10) / across.Max(), room / down.Sum());
        double[] heights = [.. down.Select(side => Math.Max(side * scale, Thinnest))];
        double height = heights.Sum() + Gap * (pieces.Length - 1);
        string id = $"step-{step.Number}";
        string title = job.Say(ProjectTexts.Take(job.Numbers(step.Pieces)));
        var canvas = new Canvas(new Spot(Width, height + 1), 1, id, title, step.Text);
        double y = 0.5;
        for (int i = 0; i < pieces.Length; i++)
        {
            DrawPiece(canvas, pieces[i], new Box(9, y, across[i] * scale, heights[i]));
            canvas.Text(new Spot(6, y + heights[i] / 2 + 0.35 * Type), job.Pieces[pieces[i].Id].Number, Type, "end", bold: true);
            y += heights[i] + Gap;
        }

        return canvas.Finish();
    }

    private static void DrawPiece(Canvas canvas, PieceAnswer piece, Box box)
    {
        bool turned = piece.Length > piece.Width;
        canvas.OpenStroked(Stroke.Cut, "#eee");
        canvas.Polygon([
            .. Outline
                .Of(piece)
                .Select(corner =>
                    turned
                        ? new Spot(corner.Y / piece.Length, corner.X / piece.Width)
                        : new Spot(corner.X / piece.Width, 1 - corner.Y / piece.Length)
                )
                .Select(share => new Spot(box.X + share.X * box.Width, box.Y + share.Y * box.Height)),
        ]);
        canvas.Close();
    }
}
