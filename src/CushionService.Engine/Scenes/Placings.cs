using CushionService.Engine.Geometry;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Scenes;

/// <summary>Where the whole panels of a cover lie, before strips are joined and faces divided.</summary>
internal sealed class Placings
{
    private readonly Dictionary<PartName, (IReadOnlyList<PlanePoint> Outline, IReadOnlyList<Placing> Places)> _panels = [];

    private Placings(CushionSpecification cushion, Pattern whole) => (Cushion, Whole) = (cushion, whole);

    /// <summary>The cushion.</summary>
    public CushionSpecification Cushion { get; }

    /// <summary>The pattern as its construction drafts it.</summary>
    public Pattern Whole { get; }

    /// <summary>The places of a cover's panels.</summary>
    /// <param name="cushion">The cushion.</param>
    /// <param name="whole">Its pattern as drafted and trimmed, before strips are joined.</param>
    public static Placings Of(CushionSpecification cushion, Pattern whole)
    {
        var places = new Placings(cushion, whole);
        switch (cushion.Construction)
        {
            case Construction.Boxed or Construction.Wedge:
                BoxPlacing.Add(places);
                break;
            case Construction.Waterfall:
                WaterfallPlacing.Add(places);
                break;
            case Construction.Bolster:
                RollPlacing.Add(places);
                break;
            case Construction.Pouf:
                PoufPlacing.Add(places);
                break;
            default:
                SheetPlacing.Add(places);
                break;
        }

        TrimPlacing.Add(places);
        return places;
    }

    /// <summary>Millimetres of a length.</summary>
    /// <param name="length">Exact; pictures need no more than a double keeps.</param>
    public static double Mm(Measures.Length length) => length.Nanometres / 1e6;

    /// <summary>Places a panel of the pattern.</summary>
    /// <param name="panel">A panel of the pattern as drafted.</param>
    /// <param name="places">One place, or several where the panel is folded over an edge.</param>
    public void Add(Panel panel, params IReadOnlyList<Placing> places) => _panels[panel.Part] = (PlanePolygon.Of(panel.Edges), places);

    /// <summary>Places the bottom, whole or divided.</summary>
    /// <param name="outline">Of the underside as it is cut whole, from its own lower left corner.</param>
    /// <param name="places">Where it lies; its halves lie there too.</param>
    public void AddBottom(IReadOnlyList<PlanePoint> outline, params IReadOnlyList<Placing> places) =>
        _panels[PartName.Bottom] = (outline, places);

    /// <summary>The outline of the bottom as it is cut whole.</summary>
    public List<PlanePoint> Underside =>
        PlanePolygon.Path(Cushion.Outline.FromBelow(Cushion.Outline.Sides).SelectMany(side => side.Path))[..^1];

    /// <summary>The bottom as it lies at a height: mirrored, unless top and bottom are cut the same.</summary>
    /// <param name="height">Over the seam line or the underside, in millimetres.</param>
    public PlaneSurface Below(double height) =>
        Cushion.Outline.IsSymmetric
            ? new PlaneSurface(new Vector(0, 0, height), Vector.Right, Vector.Back, -Vector.Up)
            : new PlaneSurface(new Vector(Mm(Cushion.Width), 0, height), -Vector.Right, Vector.Back, -Vector.Up);

    /// <summary>The part of a panel in the scene; null where it has no place of its own, as an addition that is marked alone.</summary>
    /// <param name="panel">A panel of the pattern whose strips are joined.</param>
    /// <param name="joined">All panels of that pattern.</param>
    public ScenePart? Of(Panel panel, IReadOnlyList<Panel> joined)
    {
        PartName whole = panel.Part with { Stretch = 0 },
            undivided = whole with { Half = FaceHalf.Whole };
        if (!_panels.TryGetValue(undivided, out (IReadOnlyList<PlanePoint> Outline, IReadOnlyList<Placing> Places) place))
        {
            return null;
        }

        // Two steps back to the whole panel: from a stretch of a joined strip to the strip, and from a half to the face
        // that it divides.
        PlanePoint shift = default;
        IReadOnlyList<PlanePoint> outline = place.Outline;
        if (whole.Half != FaceHalf.Whole)
        {
            Panel half = Whole[whole];
            (_, PlanePoint high) = PlanePolygon.Extent(outline);
            bool sideways = whole.Half is FaceHalf.Left or FaceHalf.Right;
            double size = Mm(sideways ? half.Width : half.Height),
                from = whole.Half is FaceHalf.Front or FaceHalf.Left ? 0 : (sideways ? high.X : high.Y) - size;
            shift = sideways ? PanelShift.Across(outline, from, from + size) : PanelShift.Along(outline, from, from + size);
            outline = PlanePolygon.Of(half.Edges);
        }

        if (panel.Part.Stretch > 0)
        {
            double from = joined.Where(part => part.Part.IsOf(whole) && part.Part.Stretch < panel.Part.Stretch).Sum(part => Mm(part.Width));
            // A loop that is cut open elsewhere goes on where the whole strip ends.
            shift +=
                panel.CutOpenAt > Measures.Length.Zero
                    ? new PlanePoint(from + Mm(panel.CutOpenAt), 0)
                    : PanelShift.Across(outline, from, from + Mm(panel.Width));
        }

        List<PlanePoint> polygon = [.. PlanePolygon.Of(panel.Edges).Select(point => point + shift)];
        return new ScenePart(
            panel,
            shift,
            [
                .. place
                    .Places.Select(placing => new ScenePatch(placing.Of(polygon), placing.Surface, placing.Kind)
                    {
                        Rim = placing.Rim ?? placing.Of(place.Outline),
                    })
                    .Where(patch => patch.Outline.Count > 2),
            ]
        );
    }

    /// <summary>The edge of that name, where the pattern's part has it.</summary>
    /// <param name="panel">The panel.</param>
    /// <param name="name">The edge's name; the panel's indexer would throw where it has none.</param>
    public static Edge? Find(Panel panel, EdgeName name)
    {
        foreach (Edge edge in panel.Edges)
        {
            if (edge.Name == name)
            {
                return edge;
            }
        }

        return null;
    }
}
