using System.Globalization;
using System.Text;
using CushionService.Nesting;

namespace CushionService.Benchmarks.Nesting;

/// <summary>Draws layouts side by side as SVG. A strip runs upward; its repeat is a grid of lines, aligned pieces are darker.</summary>
internal static class StripPicture
{
    private const int Gap = 24;
    private const int Caption = 22;

    public static string Draw(IReadOnlyList<(StripProblem Problem, StripLayout Layout, string Caption)> strips)
    {
        long height = strips.Max(strip => strip.Layout.Length);
        long width = strips.Sum(strip => strip.Problem.Width + Gap) + Gap;
        var svg = new StringBuilder();
        Line(
            svg,
            $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {width} {height + Caption + Gap}\" font-family=\"sans-serif\">"
        );
        long left = Gap;
        foreach (var (problem, layout, caption) in strips)
        {
            Strip(svg, problem, layout, left, height);
            Line(svg, $"<text x=\"{left}\" y=\"{height + Caption}\" font-size=\"12\">{caption}</text>");
            left += problem.Width + Gap;
        }

        return svg.Append("</svg>\n").ToString();
    }

    private static void Strip(StringBuilder svg, StripProblem problem, StripLayout layout, long left, long height)
    {
        const string fabric = "fill=\"#f4f1ea\" stroke=\"#555\"";
        Line(svg, $"<rect x=\"{left}\" y=\"{height - layout.Length}\" width=\"{problem.Width}\" height=\"{layout.Length}\" {fabric}/>");
        foreach (var placed in layout.Placements)
        {
            var piece = problem.Pieces[placed.Piece];
            var (across, along) = placed.Turn is 0 or 180 ? (piece.Width, piece.Length) : (piece.Length, piece.Width);
            string fill = piece.Alignment is null ? "#a9c1b4" : "#6f94a8";
            long top = height - placed.Y - along;
            Line(svg, $"<rect x=\"{left + placed.X}\" y=\"{top}\" width=\"{across}\" height=\"{along}\" fill=\"{fill}\" stroke=\"#333\"/>");
        }

        for (long x = problem.Repeat?.Width ?? 0; problem.Repeat is { Width: > 0 } lattice && x < problem.Width; x += lattice.Width)
        {
            Line(
                svg,
                $"<path d=\"M{left + x} {height - layout.Length}V{height}\" stroke=\"#b33\" stroke-dasharray=\"2 4\" stroke-width=\"0.7\"/>"
            );
        }

        for (long y = problem.Repeat?.Length ?? layout.Length; y < layout.Length; y += problem.Repeat!.Length)
        {
            Line(
                svg,
                $"<path d=\"M{left} {height - y}H{left + problem.Width}\" stroke=\"#b33\" stroke-dasharray=\"2 4\" stroke-width=\"0.7\"/>"
            );
        }
    }

    private static void Line(StringBuilder svg, FormattableString text) =>
        svg.Append(text.ToString(CultureInfo.InvariantCulture)).Append('\n');
}
