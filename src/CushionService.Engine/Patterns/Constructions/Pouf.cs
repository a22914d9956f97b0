using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Patterns.Sections;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Patterns.Constructions;

/// <summary>A round floor cushion. A drum has a disc on a wall in one strip; a gored pouf has a top of n sectors on a wall of n panels. The
/// base is a disc, or two halves with the closure between them.</summary>
/// <remarks>The wall is πD round; a sector's rim is πD/n, a curved one, so that the rim of all sectors is the circle's (general
/// geometry).</remarks>
internal sealed class Pouf : IConstruction
{
    public ConstructionOffer Offer { get; } =
        new()
        {
            Kind = Construction.Pouf,
            Description = ConstructionTexts.Pouf,
            Outlines = [OutlineKind.Circle],
            Closures =
            [
                new(ClosureKind.Zipper, [Side.Bottom]),
                new(ClosureKind.HookAndLoop, [Side.Bottom]),
                new(ClosureKind.Envelope, [Side.Bottom]),
                new(ClosureKind.HandSewn, [Side.Back]),
                new(ClosureKind.Buttons, [Side.Bottom]),
                new(ClosureKind.Ties, [Side.Bottom]),
            ],
            Thickness = true,
            Edgings =
            [
                .. EdgingOffer.Along([EdgingPlace.Top, EdgingPlace.Bottom]),
                new(EdgingKind.Ruffle, [EdgingPlace.Top, EdgingPlace.Bottom]) { Usual = [EdgingPlace.Bottom] },
            ],
            Additions = [AdditionKind.Base],
            Fields = [new(ConstructionField.Gores), new(ConstructionField.InnerCover)],
        };

    public Pattern Draft(CushionSpecification cushion)
    {
        var seam = EdgeFinish.Seam(cushion.SeamAllowance);
        int gores = cushion.Gores;
        Panel[] sectors = [.. Enumerable.Range(1, gores).Select(gore => Sector(gore, cushion.Width, gores, seam))];
        // With gores the wall is divided as the rim of the top is, so that every seam of the wall meets one of the top.
        IEnumerable<OutlineSide> runs =
            gores == 0
                ? cushion.Outline.Sides
                : sectors.Select(sector => new OutlineSide(
                    new EdgeName(EdgeWord.Gore, sector.Part.Number),
                    Side.Front,
                    Path(sector[EdgeName.Rim].Length)
                ));
        BoxingSection[] wall =
            gores == 0
                ? [BoxingSection.Plain(new PartName(PartKind.Wall), [.. runs], cushion.Thickness, seam)]
                :
                [
                    .. runs.Select(
                        (run, i) => BoxingSection.Plain(new PartName(PartKind.Wall) { Number = i + 1 }, [run], cushion.Thickness, seam)
                    ),
                ];
        Face disc = Face.Whole(PartName.Top, FabricRole.Top, cushion.Outline.Sides, seam);
        // Taken from the runs and not from the diameter: each was rounded to a nanometre, and the base's rim must be as
        // long.
        var rim = new PoufRim(cushion.Width, [.. runs], gored: gores > 0);
        ImmutableArray<Panel> bottom = PoufBase.Of(cushion, rim, seam);

        Seam[] seams =
        [
            .. Gores(sectors),
            .. wall.Select((section, i) => section.JoinedTo(wall[(i + 1) % wall.Length])),
            .. gores == 0
                ? disc.SewnTo(run => wall[0].Upper(run), _ => SeamKind.Plain)
                : sectors.Zip(
                    wall,
                    (sector, section) => new Seam(SeamKind.Plain, section.Upper(section.Runs[0]), new EdgeRef(sector.Part, EdgeName.Rim))
                ),
            .. PoufBase.Opening(bottom),
            .. PoufBase.SewnTo(
                bottom,
                [.. wall.SelectMany(section => section.Runs.Select(run => (run, section.Lower(run))))],
                cushion.Closure
            ),
        ];
        return new Pattern(
            [.. gores == 0 ? disc.Panels : [.. sectors], .. wall.SelectMany(section => section.Panels), .. bottom],
            [.. seams]
        ).Closed();
    }

    // In pairs, the pairs to halves, the halves to a top.
    private static IEnumerable<Seam> Gores(Panel[] sectors)
    {
        // Seams that meet in one point are easiest when each one joins equal halves; the last runs straight across.
        for (var step = 2; step <= 2 * sectors.Length; step *= 2)
        {
            for (var i = step / 2; i < sectors.Length; i += step)
            {
                yield return Between(sectors[i - 1], sectors[i]);
            }
        }

        if (sectors.Length > 0)
        {
            yield return Between(sectors[^1], sectors[0]);
        }

        static Seam Between(Panel one, Panel next) =>
            new(SeamKind.Plain, new EdgeRef(one.Part, EdgeName.Right), new EdgeRef(next.Part, EdgeName.Left));
    }

    // A sector of the top, its point upwards.
    // Its box is 2 r sin(π/n) wide; the rim's ends lie r (1 − cos(π/n)) above its middle (general geometry).
    private static Panel Sector(int number, Length diameter, int gores, EdgeFinish seam)
    {
        double radius = diameter.Nanometres / 2.0,
            half = Math.PI / gores;
        Length across = Length.FromNanometres((long)Math.Round(radius * Math.Sin(half))),
            low = Length.FromNanometres((long)Math.Round(radius * (1 - Math.Cos(half))));
        Point left = new(Length.Zero, low),
            right = new(2 * across, low),
            middle = new(across, Length.Zero),
            tip = new(across, diameter.HalfUp());
        ImmutableArray<Edge> edges =
        [
            new Edge(EdgeName.Rim, [new Segment(left, middle, half), new Segment(middle, right, half)], seam),
            new Edge(EdgeName.Right, right, tip, seam),
            new Edge(EdgeName.Left, tip, left, seam),
        ];
        return new Panel
        {
            Part = new PartName(PartKind.Gore) { Number = number },
            Role = FabricRole.Top,
            Edges = edges,
            Match = tip,
        };
    }

    // A wall is a straight strip: of the rim it takes the length alone.
    private static ImmutableArray<Segment> Path(Length length) => [new Segment(default, new Point(length, Length.Zero))];
}
