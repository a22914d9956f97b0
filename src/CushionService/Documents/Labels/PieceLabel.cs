using System.Collections;
using System.Globalization;
using System.Text;
using CushionService.Contract.Answers;
using CushionService.Documents.Drawings;
using QRCoder;

namespace CushionService.Documents.Labels;

/// <summary>Draws the label of one physical piece: its part, its cushion, size, fabric, how it may lie, which copy it is, and a QR code
/// (ISO/IEC 18004) that carries reference, piece and copy.</summary>
internal static class PieceLabel
{
    private const double Edge = 2.5;

    // A line that is too long is set smaller, down to this share, before it is cut short: what the piece is must be read.
    private const double Smallest = 0.6;

    /// <summary>What the code carries: a query of the piece, its copy and, where the order has one, its reference.</summary>
    public static string Content(string? reference, PieceAnswer piece, int copy)
    {
        string order = reference is null ? "" : $"reference={Uri.EscapeDataString(reference)}&";
        return string.Create(CultureInfo.InvariantCulture, $"{order}piece={Uri.EscapeDataString(piece.Id)}&copy={copy}");
    }

    /// <summary>Draws the label into a box.</summary>
    /// <param name="canvas">A drawing in millimetres.</param>
    /// <param name="box">The label.</param>
    /// <param name="reference">The order's; null for none.</param>
    /// <param name="piece">The piece.</param>
    /// <param name="cushion">What people call its cushion; null for a piece of the maker's own.</param>
    /// <param name="copy">Which copy it is, from 1.</param>
    /// <param name="units">The order's units.</param>
    public static void Draw(Canvas canvas, Box box, string? reference, PieceAnswer piece, string? cushion, int copy, OrderUnits units)
    {
        double side = Math.Min(box.Height - 2 * Edge, 0.36 * box.Width);
        DrawCode(canvas, new Spot(box.Right - Edge - side, box.Y + Edge), side, Content(reference, piece, copy));
        double type = Math.Clamp(box.Height / 9, 2.4, 5);
        double room = box.Width - side - 3 * Edge;
        string copies = units.Say(LabelTexts.Copy(copy, piece.Quantity));
        (string Text, bool Bold)[] lines =
        [
            (PartOf(piece, cushion), true),
            .. cushion is null ? [] : ((string, bool)[])[(cushion, false)],
            (units.Size(piece.Width, piece.Length), true),
            (piece.Fabric, false),
            (units.Say(GrainArrow.Meaning(piece.Rotation)), false),
            (copies, false),
            (reference ?? "", false),
        ];
        double y = box.Y + Edge + type;
        foreach ((string text, bool bold) in lines)
        {
            string words = PrintableText.Of(text);
            double size = type * Math.Clamp(room / type / Math.Max(1, TextWidth.Of(words, bold)), Smallest, 1);
            canvas.Text(new Spot(box.X + Edge, y), TextWidth.Shorten(words, room / size, bold), size, bold: bold);
            y += Math.Min(1.4 * type, (box.Height - 2 * Edge) / lines.Length);
        }
    }

    // The part comes first and alone: a long name of the cushion, which does not fit, must not hide what the piece is.
    private static string PartOf(PieceAnswer piece, string? cushion) =>
        cushion is null ? piece.Label ?? piece.Id : PieceNames.PartOf(piece);

    // The dark modules of each row as one path, in modules: whole numbers make a short one. The quiet zone that the code needs round it
    // is part of its side.
    private static void DrawCode(Canvas canvas, Spot corner, double side, string content)
    {
        using var generator = new QRCodeGenerator();
        using QRCodeData code = generator.CreateQrCode(content, QRCodeGenerator.ECCLevel.M);
        List<BitArray> rows = code.ModuleMatrix;
        double module = side / rows.Count;
        var path = new StringBuilder();
        for (int row = 0; row < rows.Count; row++)
        {
            for (int column = 0; column < rows.Count; column++)
            {
                if (!rows[row][column])
                {
                    continue;
                }

                int end = column;
                while (end < rows.Count && rows[row][end])
                {
                    end++;
                }

                path.Append(CultureInfo.InvariantCulture, $"M{column},{row}H{end}V{row + 1}H{column}Z");
                column = end;
            }
        }

        string scale = module.ToString("0.####", CultureInfo.InvariantCulture);
        string place = string.Create(CultureInfo.InvariantCulture, $"matrix({scale} 0 0 {scale} {corner.X:0.###} {corner.Y:0.###})");
        canvas.Element("path", ("class", "code"), ("transform", place), ("d", path.ToString()), ("fill", "#000"));
    }
}
