using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Documents.Drawings;

namespace CushionService.Documents.CutSheets;

/// <summary>A piece at true size as a document to print, a sheet of paper to a page.</summary>
internal static class PatternDocument
{
    /// <summary>The document of a piece.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="units">The unit of its lengths.</param>
    /// <param name="paper">The paper; when null, Letter for a quote in inches and A4 for a metric one.</param>
    /// <param name="number">The piece's number in the answer's list.</param>
    /// <returns>An HTML document, to be served as UTF-8.</returns>
    public static string Write(PieceAnswer piece, Units units, Paper? paper = null, string number = "1")
    {
        Paper sheets = paper ?? Paper.For(units);
        var html = new Html();
        html.Add($"""<!DOCTYPE html>""");
        html.Add($"""<html lang="en"><head><meta charset="utf-8">""");
        html.Add(
            $"""<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'"><title>{piece.Id}</title>"""
        );
        html.AddStyle(
            $"@page {{ size: {sheets.Name}; margin: 0; }}\nbody {{ margin: 0; }}\nsvg {{ display: block; break-inside: avoid; break-after: page; }}\nsvg:last-of-type {{ break-after: auto; }}"
        );
        html.Add($"""</head><body>""");
        foreach (string sheet in TruePattern.Sheets(piece, units, sheets, number))
        {
            html.Add($"{new Svg(sheet)}");
        }

        html.Add($"""</body></html>""");
        return html.ToString();
    }
}
