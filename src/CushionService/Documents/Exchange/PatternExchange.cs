using System.Collections.Immutable;
using System.Globalization;
using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Documents.Drawings;
using CushionService.Documents.TrueSize;
using CushionService.Engine.Geometry;
using CushionService.Engine.Patterns.Panels;

namespace CushionService.Documents.Exchange;

/// <summary>Pieces for pattern and cutting programs, by ASTM D6673 (sewn product pattern data interchange): a block for each piece, its
/// lines on the numbered layers of that practice, and an insertion of each block.</summary>
/// <remarks>Covered: layers 1 to 4, 7, 8, 13, 14, 15, 84 and 87, and the texts of piece, size, quantity, material and units. Not covered:
/// grading (5), mirror lines (6), stripe and plaid references (9, 10), cut-outs (11), other shapes of notch (80 to 83). Lengths are
/// inches for an order in inches (UNITS: ENGLISH) and millimetres for any other (UNITS: METRIC).</remarks>
internal static class PatternExchange
{
    // The numbers of layers are the practice's.
    private const int Boundary = 1;
    private const int TurnPoint = 2;
    private const int CurvePoint = 3;
    private const int Notch = 4;
    private const int Grain = 7;
    private const int Internal = 8;
    private const int DrillHole = 13;
    private const int SewLine = 14;
    private const int Annotation = 15;
    private const int BoundaryCurve = 84;
    private const int SewLineCurve = 87;

    // Above it a corner turns; below it a curve goes on (a choice of ours, no source).
    private const double Turn = Math.PI / 9;

    // Chords of a seam line's arc, each within a fifth of a millimetre for a radius of a metre.
    private const double Chord = Math.PI / 90;

    // Release 12 of DXF allows 31 letters.
    private const int LongestName = 31;

    /// <summary>The file.</summary>
    /// <param name="pieces">The pieces.</param>
    /// <param name="reference">The order's; null for none.</param>
    /// <param name="units">The order's unit.</param>
    /// <returns>Text in ASCII.</returns>
    public static string Write(IReadOnlyList<PatternPiece> pieces, string? reference, Units units)
    {
        // Drawn pieces are in millimetres.
        double scale = units == Units.In ? 1 / 25.4 : 1;
        var dxf = new DxfText();
        dxf.Add(0, "SECTION").Add(2, "HEADER").Add(9, "$ACADVER").Add(1, "AC1009").Add(0, "ENDSEC");
        dxf.Add(0, "SECTION").Add(2, "BLOCKS");
        foreach (PatternPiece piece in pieces)
        {
            AddBlock(dxf, piece, scale);
        }

        dxf.Add(0, "ENDSEC").Add(0, "SECTION").Add(2, "ENTITIES");
        string measure = units == Units.In ? "ENGLISH" : "METRIC";
        double text = 10 * scale;
        // Texts of the whole style are outside the blocks, below the first piece.
        string[] heads = [$"STYLE NAME: {reference ?? "ORDER"}", "AUTHOR: CushionService", $"UNITS: {measure}"];
        for (int i = 0; i < heads.Length; i++)
        {
            dxf.Text(Boundary, 0, -2 * text * (i + 1), text, heads[i]);
        }

        double x = 0;
        // Blocks are inserted side by side, 20 mm apart: a reader that shows the file shows no piece on another.
        foreach (PatternPiece piece in pieces)
        {
            dxf.Entity("INSERT", Boundary).Add(2, NameOf(piece)).At(x, 0);
            x += (piece.Drawn.Width + 20) * scale;
        }

        return dxf.Add(0, "ENDSEC").Add(0, "EOF").ToString();
    }

    /// <summary>The name of a piece's block: its number and its id, in the letters that release 12 allows.</summary>
    /// <param name="piece">The piece. The number comes first, so that names stay apart when they are cut to 31
    /// letters.</param>
    public static string NameOf(PatternPiece piece)
    {
        string id = new([.. piece.Answer.Id.ToUpperInvariant().Select(letter => char.IsAsciiLetterOrDigit(letter) ? letter : '-')]);
        string name = string.Create(CultureInfo.InvariantCulture, $"{piece.Number}_{id}");
        return name[..Math.Min(name.Length, LongestName)];
    }

    private static void AddBlock(DxfText dxf, PatternPiece piece, double scale)
    {
        string name = NameOf(piece);
        dxf.Entity("BLOCK", Boundary).Add(2, name).Add(70, 0).At(0, 0).Add(3, name);
        (double X, double Y)[] corners = Corners(piece.Drawn, scale);
        dxf.Polyline(Boundary, corners, true);
        for (int i = 0; i < corners.Length; i++)
        {
            bool turns = Turns(corners[(i + corners.Length - 1) % corners.Length], corners[i], corners[(i + 1) % corners.Length]);
            dxf.Point(turns ? TurnPoint : CurvePoint, corners[i].X, corners[i].Y);
        }

        // The curve that the boundary's points are on, for a reader that fits a curve of its own and compares.
        dxf.Polyline(BoundaryCurve, piece.Lines.Cut.IsEmpty ? corners : Flattened(piece.Lines.Cut, scale), true);
        if (!piece.Lines.Finished.IsEmpty)
        {
            dxf.Polyline(SewLine, Flattened(piece.Lines.Finished, scale), true);
            dxf.Polyline(SewLineCurve, Flattened(piece.Lines.Finished, scale), true);
        }

        AddGrain(dxf, piece.Drawn, scale);
        foreach (MarkAnswer mark in piece.Drawn.Marks)
        {
            AddMark(dxf, mark, piece.Drawn, scale);
        }

        AddTexts(dxf, piece, scale);
        dxf.Entity("ENDBLK", Boundary);
    }

    private static void AddTexts(DxfText dxf, PatternPiece piece, double scale)
    {
        double height = 5 * scale;
        string[] texts =
        [
            $"PIECE NAME: {piece.Answer.Label ?? piece.Answer.Id}",
            string.Create(CultureInfo.InvariantCulture, $"QUANTITY: {piece.Answer.Quantity}"),
            $"MATERIAL: {piece.Answer.Fabric}",
            "SIZE: ONE",
        ];
        for (int i = 0; i < texts.Length; i++)
        {
            dxf.Text(Boundary, piece.Drawn.Width / 4 * scale, piece.Drawn.Length / 2 * scale - 2 * height * i, height, texts[i]);
        }
    }

    // The grain line lies along the bolt.
    private static void AddGrain(DxfText dxf, PieceAnswer piece, double scale)
    {
        (double width, double length) = (piece.Width * scale, piece.Length * scale);
        if (piece.Grain == Engine.Specifications.Fabrics.Grain.Railroaded)
        {
            dxf.Line(Grain, (width / 4, length / 2), (3 * width / 4, length / 2));
        }
        else
        {
            dxf.Line(Grain, (width / 2, length / 4), (width / 2, 3 * length / 4));
        }
    }

    private static void AddMark(DxfText dxf, MarkAnswer mark, PieceAnswer piece, double scale)
    {
        (double x, double y) = (mark.X * scale, mark.Y * scale);
        switch (mark.Kind)
        {
            case MarkKind.Notch:
                dxf.Point(Notch, x, y);
                break;
            case MarkKind.DoubleNotch:
                // Side by side along the edge.
                Spot aside = 3 * scale * NearestEdge.Inward(Outline.Of(piece), new Spot(mark.X, mark.Y)).Turned();
                dxf.Point(Notch, x - aside.X, y - aside.Y);
                dxf.Point(Notch, x + aside.X, y + aside.Y);
                break;
            // What only helps the eye has no layer of its own in the practice.
            case MarkKind.UpArrow or MarkKind.SeamDot or MarkKind.FaceName:
                break;
            case var _ when mark is { ToX: { } toX, ToY: { } toY }:
                dxf.Line(Internal, (x, y), (toX * scale, toY * scale));
                break;
            default:
                dxf.Point(DrillHole, x, y);
                dxf.Text(Annotation, x + 2 * scale, y + 2 * scale, 3 * scale, KindText.Of(mark.Kind));
                break;
        }
    }

    // A piece without points is a rectangle; counter-clockwise from its lower left corner.
    private static (double X, double Y)[] Corners(PieceAnswer piece, double scale) =>
        piece.Points is { } points
            ? [.. points.Select(point => (point.X * scale, point.Y * scale))]
            : [(0, 0), (piece.Width * scale, 0), (piece.Width * scale, piece.Length * scale), (0, piece.Length * scale)];

    // Whether the outline changes its direction by more than a curve's chords do.
    private static bool Turns((double X, double Y) before, (double X, double Y) at, (double X, double Y) after)
    {
        double turn = Math.Atan2(after.Y - at.Y, after.X - at.X) - Math.Atan2(at.Y - before.Y, at.X - before.X);
        return Math.Abs(Math.IEEERemainder(turn, 2 * Math.PI)) > Turn;
    }

    // Straight lines by their first point, arcs by chords; engine lengths are nanometres, hence the million.
    private static List<(double X, double Y)> Flattened(ImmutableArray<Segment> outline, double scale)
    {
        List<(double X, double Y)> corners = [];
        foreach (Segment line in outline)
        {
            int count = line.IsStraight ? 1 : (int)Math.Ceiling(Math.Abs(line.Sweep) / Chord);
            for (int i = 0; i < count; i++)
            {
                Point at = line.At((double)i / count);
                corners.Add((at.X.Nanometres / 1e6 * scale, at.Y.Nanometres / 1e6 * scale));
            }
        }

        return corners;
    }
}
