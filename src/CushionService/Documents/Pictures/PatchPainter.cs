using CushionService.Engine.Scenes;

namespace CushionService.Documents.Pictures;

/// <summary>Draws what is seen of a panel: its fabric, its print or hatch, its shade, and its edge.</summary>
/// <param name="source">What is drawn.</param>
/// <param name="sketch">Takes the shapes.</param>
/// <param name="detail">How much of prints and hatches is drawn.</param>
internal sealed class PatchPainter(PictureSource source, Sketch sketch, int detail)
{
    // Shades are rounded to that many steps, so that neighbouring stretches of nearly the same shade become one shape.
    private const double Tones = 14;
    private static readonly Ink Edge = new(null, 1, Tint.Line, 2.2);
    private static readonly Ink WrongSide = new(Tint.Light, 0.55);

    // Where a crown catches the light, as shares of the way to where it rises no more, and how much of it. Each step has an ink of its own:
    // what has the same is one shape, and would not add up.
    private static readonly (double Share, Ink Ink)[] Lit = [(0.3, Light(0.11)), (0.62, Light(0.08))];
    private static readonly (double Share, Ink Ink)[] LitPillow =
    [
        (0.16, Light(0.09)),
        (0.32, Light(0.08)),
        (0.5, Light(0.07)),
        (0.7, Light(0.06)),
    ];
    private readonly PrintPainter _prints = new(sketch, detail);

    /// <summary>Draws a patch.</summary>
    /// <param name="seen">A part of a patch that turns no corner; where its wrong side is seen it has no print and no
    /// shade.</param>
    public void Paint(VisiblePatch seen)
    {
        sketch.Fill(seen.Seen(seen.Domain, true, sketch.Camera), new Ink(source.Fabric(seen.Part.Panel).Tint));
        if (seen.IsAway)
        {
            sketch.Fill(seen.Seen(seen.Domain, true, sketch.Camera), WrongSide);
        }
        else
        {
            Surface(seen);
        }

        sketch.Fill(seen.Patch.Surface.Bent(seen.Domain, true).Select(seen.At), Edge);
    }

    /// <summary>Draws what is on a patch whose fabric is drawn already.</summary>
    /// <param name="seen">A part of a patch.</param>
    public void Surface(VisiblePatch seen)
    {
        PictureFabric fabric = source.Fabric(seen.Part.Panel);
        _prints.Hatch(seen, fabric.Hatch);
        if (source.Print(seen.Part.Panel.Part) is { } phase)
        {
            _prints.Print(seen, phase);
        }

        Shade(seen);
        if (seen.Crown is { } crown && detail < PrintPainter.Bare)
        {
            Highlight(seen, crown);
        }
    }

    private static Ink Light(double opacity) => new(Tint.Light, opacity);

    private void Highlight(VisiblePatch seen, Crown crown)
    {
        var contours = new Contours(seen.Domain, crown.Share);
        foreach ((double share, Ink ink) in seen.Patch.Kind == PatchKind.Pillow ? LitPillow : Lit)
        {
            foreach (List<PlanePoint> ring in contours.Of(share))
            {
                sketch.Fill(seen.Seen(ring, true, sketch.Camera), ink);
            }
        }
    }

    // One tone for a flat patch; on a bent one a tone for each stretch that has the same.
    private void Shade(VisiblePatch seen)
    {
        Surface surface = seen.Patch.Surface;
        (PlanePoint low, PlanePoint high) = PlanePolygon.Extent(seen.Domain);
        double[] cuts =
        [
            surface.DistanceTo(low),
            .. surface.Bends.Select(bend => bend.At).Where(at => at > surface.DistanceTo(low) && at < surface.DistanceTo(high)),
            surface.DistanceTo(high),
        ];
        PlanePoint middle = seen.Middle,
            way = surface.BendsAlongY ? new PlanePoint(0, 1) : new PlanePoint(1, 0);
        int start = 0;
        for (int i = 1; i < cuts.Length; i++)
        {
            double tone = Tone(i);
            if (i + 1 < cuts.Length && Tone(i + 1) == tone)
            {
                continue;
            }

            if (tone > 0)
            {
                List<PlanePoint> stretch = PlanePolygon.Band(seen.Domain, way, cuts[start], cuts[i]);
                sketch.Fill(surface.Bent(stretch, true).Select(seen.At), new Ink(Tint.Shade, tone));
            }

            start = i;
        }

        double Tone(int i)
        {
            double at = (cuts[i - 1] + cuts[i]) / 2;
            Vector normal = surface.Normal(surface.BendsAlongY ? middle with { Y = at } : middle with { X = at });
            return Math.Round(sketch.Camera.Shade(normal) * Tones) / Tones;
        }
    }
}
