using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Scenes;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Documents.Pictures;

/// <summary>Draws what is sewn onto a panel, or through it: the lines of its closure, stitching, handles, pockets, eyelets, buttons and
/// tufts, where the pattern marks them.</summary>
/// <param name="source">What is drawn.</param>
/// <param name="sketch">Takes the shapes.</param>
/// <param name="detail">How much is drawn: 0 for all, and less the higher it is.</param>
internal sealed class FeaturePainter(PictureSource source, Sketch sketch, int detail)
{
    private const double Eyelet = 5;
    private const double ButtonOfClosure = 8;

    // How far studs lie apart, in millimetres, and how many there are at most from corner to corner.
    private const double StudsApart = 30;
    private const double MostStuds = 14;
    private static readonly Ink Stitching = new(null, 1, Tint.Line, 1.6) { IsDashed = true };
    private static readonly Ink Thin = new(null, 1, Tint.Line, 1.6);
    private static readonly Ink Sheet = new(Tint.Light, 1, Tint.Line, 1.6);
    private static readonly Ink Teeth = new(null, 1, Tint.Light, 2.6) { IsDashed = true };
    private static readonly Ink Tape = new(null, 1, Tint.Line, 5.4);

    /// <summary>Draws what is on a patch.</summary>
    /// <param name="seen">A patch that is drawn already: what is on it is drawn over it.</param>
    public void On(VisiblePatch seen)
    {
        Panel panel = seen.Part.Panel;
        if (panel.Part.Kind == PartKind.Bottom && source.Cushion.Trim.Base == BaseKind.AntiSlip)
        {
            Grip(seen);
        }

        foreach (Edge edge in panel.Edges)
        {
            ClosureLine(seen, edge);
        }

        foreach (PanelMark mark in panel.Marks)
        {
            Mark(seen, mark);
        }

        foreach (PanelMark[] ends in panel.Marks.Where(mark => mark.Kind == MarkKind.HandleEnd).Chunk(2))
        {
            Handle(seen, ends);
        }

        Pocket(seen, [.. panel.Marks.Where(mark => mark.Purpose == MarkPurpose.SewPocket)]);
    }

    /// <summary>Draws the base under a patch of the underside as a sheet of its own. Its studs face down; they are drawn as if one saw them
    /// through it.</summary>
    public void Base(VisiblePatch seen)
    {
        sketch.Fill(seen.Seen(seen.Domain, true, sketch.Camera), Sheet);
        Grip(seen);
    }

    private static double Mm(Engine.Measures.Length length) => length.Nanometres / 1e6;

    // The studs of an anti-slip base.
    private void Grip(VisiblePatch seen)
    {
        (PlanePoint low, PlanePoint high) = PlanePolygon.Extent(seen.Domain);
        // Wider on a large base, so that the number of studs is bounded whatever its size.
        double apart = Math.Max(StudsApart, (high - low).Size / MostStuds);
        for (double y = low.Y + apart / 2; y < high.Y; y += apart)
        {
            for (double x = low.X + apart / 2; x < high.X; x += apart)
            {
                PlanePoint at = new(x, y);
                // A dash of a tenth of the distance, drawn with a wide round pen, is a stud of few bytes.
                if (PlanePolygon.Inside(seen.Domain, at) > apart / 4)
                {
                    sketch.Draw(seen.Seen([at, at + new PlanePoint(0.1 * apart, 0)], false, sketch.Camera), Tape);
                }
            }
        }
    }

    // A zipper, the hem that lies over another, or the gap that is sewn shut by hand.
    private void ClosureLine(VisiblePatch seen, Edge edge)
    {
        var named = new EdgeRef(seen.Part.Panel.Part, edge.Name);
        Seam? seam = source.Scene.Pattern.Seams.FirstOrDefault(seam => seam.One.Contains(named) || seam.Other.Contains(named));
        bool isOver =
            edge.Finish.Kind == FinishKind.Hem
            && seen.Part.Panel.Part
                is { Kind: PartKind.ClosureUpper or PartKind.Body }
                    or { Kind: PartKind.Bottom, Half: FaceHalf.Back or FaceHalf.Right };
        if (!isOver && seam?.Kind is not (SeamKind.Zipper or SeamKind.Gap))
        {
            return;
        }

        SceneLine line = seen.Part.LineOf(named);
        Vector[] points =
            line.Patch.Surface == seen.Patch.Surface && line.Patch.Kind == seen.Patch.Kind
                ? [.. line.Flat.Where(point => PlanePolygon.Inside(seen.Domain, point) > -0.5).Select(seen.At)]
                : [];
        if (points.Length < 2)
        {
            return;
        }

        if (isOver)
        {
            sketch.Draw(points, Thin with { Width = 2.6 });
        }
        else if (seam!.Kind == SeamKind.Zipper)
        {
            sketch.Draw(points, Tape);
            sketch.Draw(points, Teeth);
        }
        else
        {
            sketch.Draw(points, Stitching with { Width = 2.6 });
        }
    }

    private void Mark(VisiblePatch seen, PanelMark mark)
    {
        PlanePoint from = PlanePoint.Of(mark.From) + seen.Part.Shift;
        bool lies = PlanePolygon.Inside(seen.Domain, from) > -0.5;
        switch (mark.Purpose)
        {
            case MarkPurpose.StitchChannel
            or MarkPurpose.StitchBody
            or MarkPurpose.LapZipper
            or MarkPurpose.TaperCorner when mark.To is { } to:
                List<PlanePoint> line = [from, PlanePoint.Of(to) + seen.Part.Shift];
                Ink ink = mark.Purpose == MarkPurpose.StitchChannel ? Thin with { Width = 2.4 } : Stitching;
                sketch.Draw(seen.Seen(line, false, sketch.Camera), ink);
                break;
            case MarkPurpose.SetEyelet when lies:
                Round(seen, from, Eyelet / sketch.Scale, new Ink(Tint.Line));
                Round(seen, from, Eyelet / 2 / sketch.Scale, new Ink(Tint.Light));
                break;
            case MarkPurpose.Button when lies && IsOver(seen.Part.Panel.Part):
                Round(seen, from, ButtonOfClosure / sketch.Scale, new Ink(Tint.Light, 1, Tint.Line, 1.8));
                break;
            case MarkPurpose.SewClosureTie when lies && IsOver(seen.Part.Panel.Part):
                Bow(seen, from);
                break;
            case MarkPurpose.Tuft when lies:
                Tuft(seen, from);
                break;
        }
    }

    private static bool IsOver(PartName part) =>
        part.Kind is PartKind.ClosureUpper or PartKind.Body || part.Half is FaceHalf.Back or FaceHalf.Right;

    private void Tuft(VisiblePatch seen, PlanePoint at)
    {
        TuftSpecification tufts = source.Cushion.Trim.Tufts!;
        double radius = Math.Max(Mm(tufts.ButtonDiameter) / 2, 5 / sketch.Scale);
        if (detail > 2)
        {
            sketch.Draw(seen.Seen([at, at + new PlanePoint(0.2 * radius, 0)], false, sketch.Camera), Tape);
            return;
        }

        foreach (double turn in detail > 0 ? [] : (double[])[0.6, 2.2, 3.7, 5.3])
        {
            PlanePoint way = new(Math.Cos(turn), Math.Sin(turn));
            sketch.Draw(seen.Seen([at + radius * way, at + 2.6 * radius * way], false, sketch.Camera), Thin with { Width = 1.2 });
        }

        Tint fabric = tufts.Covered ? source.Fabric(FabricRole.Buttons).Tint : Tint.Light;
        Round(seen, at, radius, new Ink(fabric, 1, Tint.Line, 1.8));
    }

    private void Round(VisiblePatch seen, PlanePoint at, double radius, Ink ink)
    {
        int corners = detail switch
        {
            0 => 12,
            1 => 8,
            _ => 5,
        };
        IEnumerable<PlanePoint> ring =
            from i in Enumerable.Range(0, corners)
            let turn = 2 * Math.PI * i / corners
            select at + radius * new PlanePoint(Math.Cos(turn), Math.Sin(turn));
        sketch.Fill(seen.Seen([.. ring], true, sketch.Camera), ink);
    }

    // Two loops and two ends, as a tied pair is seen.
    private void Bow(VisiblePatch seen, PlanePoint at)
    {
        double size = 16 / sketch.Scale;
        Ink ink = new(source.Fabric(FabricRole.Ties).Tint, 1, Tint.Line, 1.6);
        foreach (int way in (int[])[-1, 1])
        {
            PlanePoint[] loop =
            [
                at,
                at + new PlanePoint(way * size, 0.7 * size),
                at + new PlanePoint(1.3 * way * size, 0),
                at + new PlanePoint(way * size, -0.5 * size),
            ];
            sketch.Fill(seen.Seen(loop, true, sketch.Camera), ink);
            sketch.Draw(
                seen.Seen([at, at + new PlanePoint(0.7 * way * size, -1.6 * size)], false, sketch.Camera),
                Thin with
                {
                    Width = 2.4,
                }
            );
        }
    }

    // It is off the side by as much as it is longer than the span between its sewn ends: a shallow arc (general geometry).
    private void Handle(VisiblePatch seen, PanelMark[] ends)
    {
        if (ends is not [{ To: { } top } one, var other] || source.Cushion.Handle is not { } handle)
        {
            return;
        }

        PlanePoint from = PlanePoint.Of(one.From) + seen.Part.Shift,
            to = PlanePoint.Of(other.From) + seen.Part.Shift;
        if (PlanePolygon.Inside(seen.Domain, 0.5 * (from + to)) < 0)
        {
            return;
        }

        // A shallow arc over a span s with a rise r is about s + 8 r² / (3 s) long; solved for the rise.
        double width = (PlanePoint.Of(top) + seen.Part.Shift - from).Y,
            span = to.X - from.X,
            rise = Math.Sqrt(3 * span * Math.Max(0, Mm(handle.Length) - span) / 8);
        Vector Strap(double share, double up)
        {
            PlanePoint at = from + share * (to - from) + new PlanePoint(0, up);
            // A parabola, which at such a rise cannot be told from the arc.
            return seen.At(at) + 4 * share * (1 - share) * rise * seen.Normal(at);
        }

        double[] shares = [.. Enumerable.Range(0, 11).Select(i => i / 10.0)];
        Tint fabric = handle.HasStrap ? source.Fabric(FabricRole.Handle).Tint : Tint.Webbing;
        sketch.Fill(
            [.. shares.Select(share => Strap(share, 0)), .. shares.Reverse().Select(share => Strap(share, width))],
            new Ink(fabric, 1, Tint.Line, 2)
        );
        foreach (double end in (double[])[0, 1])
        {
            double square = width / span * (end == 0 ? 1 : -1);
            sketch.Draw([Strap(end, 0), Strap(end + square, width)], Thin with { Width = 1 });
            sketch.Draw([Strap(end, width), Strap(end + square, 0)], Thin with { Width = 1 });
        }
    }

    private void Pocket(VisiblePatch seen, PanelMark[] lines)
    {
        if (lines.Length == 0)
        {
            return;
        }

        PlanePoint[] corners =
        [
            .. lines.Select(line => PlanePoint.Of(line.From) + seen.Part.Shift),
            PlanePoint.Of(lines[^1].To!.Value) + seen.Part.Shift,
        ];
        if (PlanePolygon.Inside(seen.Domain, PlanePolygon.Middle(corners)) > 0)
        {
            sketch.Fill(seen.Bent(corners, true).Select(seen.At), new Ink(source.Fabric(FabricRole.Pocket).Tint, 1, Tint.Line, 1.8));
            sketch.Draw(seen.Bent([corners[0], corners[^1]], false).Select(seen.At), Thin with { Width = 3 });
        }
    }
}
