using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Additions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Patterns.Sections;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Patterns.Constructions;

/// <summary>A box cushion: a top, a bottom, and a boxing between them that is measured on the seam line.</summary>
internal sealed class Boxed : IConstruction
{
    private static readonly ImmutableArray<Side> AnySide = [Side.Back, Side.Front, Side.Left, Side.Right];

    public ConstructionOffer Offer { get; } =
        new()
        {
            Kind = Construction.Boxed,
            Description = ConstructionTexts.Boxed,
            Outlines = [.. Enum.GetValues<OutlineKind>()],
            Closures =
            [
                new(ClosureKind.Zipper, [.. AnySide, Side.Bottom]),
                new(ClosureKind.HookAndLoop, [.. AnySide, Side.Bottom]),
                new(ClosureKind.Envelope, [Side.Bottom]),
                new(ClosureKind.HandSewn, AnySide),
                new(ClosureKind.Buttons, [.. AnySide, Side.Bottom]),
                new(ClosureKind.Ties, [.. AnySide, Side.Bottom]),
            ],
            Thickness = true,
            Joins = [BoxingJoins.Corners, BoxingJoins.Back],
            Handles = [HandleKind.FoldedStrap, HandleKind.Webbing, HandleKind.StrapAndWebbing],
            Edgings =
            [
                .. EdgingOffer.Along([EdgingPlace.Top, EdgingPlace.Bottom], EdgingPlace.Corners),
                new(EdgingKind.Ruffle, [EdgingPlace.Top, EdgingPlace.Bottom]) { Usual = [EdgingPlace.Top] },
                new(EdgingKind.Flange, [EdgingPlace.Top]),
            ],
            Additions = [.. Enum.GetValues<AdditionKind>()],
            Fields = [new(ConstructionField.Channels), new(ConstructionField.InnerCover)],
            FlapsEitherWay = true,
            ZipsThreeSides = true,
        };

    public Pattern Draft(CushionSpecification cushion)
    {
        var seam = EdgeFinish.Seam(cushion.SeamAllowance);
        // A closure across the underside leaves the boxing whole; the circuit then begins at the back.
        Circuit circuit = cushion.Closure is ZipperClosure { ThreeSides: true }
            ? Circuit.OfThree(cushion.Outline, cushion.Closure.Side)
            : Circuit.Of(cushion.Outline, cushion.Closure.Side == Side.Bottom ? Side.Back : cushion.Closure.Side, Return(cushion.Closure));
        // Where the closure's section ends within a side, that side is two runs: the faces take the same ones, so that
        // their notches and the section's ends meet.
        ImmutableArray<OutlineSide> runs = circuit.All;
        ImmutableArray<BoxingSection> boxing =
            cushion.Joins == BoxingJoins.Back ? Wrapped(cushion, circuit, seam) : [.. Cornered(cushion, circuit, seam)];
        Face top = Face.Whole(PartName.Top, FabricRole.Top, runs, seam);
        Face bottom = Face.Bottom(cushion, runs, seam, top);

        var panels = ImmutableArray.CreateBuilder<Panel>(
            top.Panels.Length + bottom.Panels.Length + boxing.Sum(section => section.Panels.Length)
        );
        panels.AddRange(top.Panels);
        panels.AddRange(bottom.Panels);
        foreach (BoxingSection section in boxing)
        {
            panels.AddRange(section.Panels);
        }

        Pattern box = Channels.AddTo(new Pattern(panels.DrainToImmutable(), Sewn(cushion, runs, boxing, top, bottom)), cushion);
        return FoldedStrap.AddTo(box, cushion, (pattern, side) => MiddleOf(pattern, cushion, side)).Closed();
    }

    // The zippers first, then the ring of the boxing, then the faces onto it.
    private static ImmutableArray<Seam> Sewn(
        CushionSpecification cushion,
        ImmutableArray<OutlineSide> runs,
        ImmutableArray<BoxingSection> boxing,
        Face top,
        Face bottom
    )
    {
        var seams = ImmutableArray.CreateBuilder<Seam>(1 + (2 * boxing.Length) + (2 * runs.Length));
        seams.AddRange(bottom.Zipper);
        foreach (BoxingSection section in boxing)
        {
            if (section.Middle is { } middle)
            {
                seams.Add(middle);
            }
        }

        // The strips are first joined to a ring, in the order in which they lie, and the faces sewn to it after.
        for (var i = 0; i < boxing.Length; i++)
        {
            Seam join = boxing[i].JoinedTo(boxing[(i + 1) % boxing.Length]);
            seams.Add(cushion.Joins == BoxingJoins.Corners ? join with { IsCorner = true } : join);
        }

        // Loops instead of a query: every box cushion that is quoted comes through here, for each run of its seam line.
        BoxingSection SectionOf(OutlineSide run)
        {
            foreach (BoxingSection section in boxing)
            {
                foreach (OutlineSide known in section.Runs)
                {
                    if (known.Name == run.Name)
                    {
                        return section;
                    }
                }
            }

            throw new InvalidPatternException($"No section of the boxing runs along {run.Name}.");
        }

        seams.AddRange(top.SewnTo(run => SectionOf(run).Upper(run), _ => SeamKind.Plain));
        seams.AddRange(
            bottom.SewnTo(
                run => SectionOf(run).Lower(run),
                // Sewn shut by hand last: the seam between the boxing and the underside stays open along that side.
                run => cushion.Closure is HandSewnClosure closure && run.Side == closure.Side ? SeamKind.Gap : SeamKind.Plain
            )
        );
        return seams.DrainToImmutable();
    }

    // The strip over a side, and where the middle of a handle lies on it.
    private static (PartName Part, Point Middle)? MiddleOf(Pattern pattern, CushionSpecification cushion, Side side) =>
        BoxingSide.Of(pattern, cushion, side) is { } strip
            ? (strip.Part, new Point(strip.MiddleFor(cushion.Handle!.Span), pattern[strip.Part].Height.HalfUp()))
            : null;

    // How far the closure's section runs on round the corners of its side. A closure across the bottom has no section in the boxing.
    private static Length Return(ClosureSpecification closure) =>
        closure switch
        {
            ZipperClosure { Side: not Side.Bottom } zipper => zipper.Return,
            OverlappingClosure { Side: not Side.Bottom } overlapping => overlapping.Return,
            _ => Length.Zero,
        };

    // The closure's section, and one strip from its end round the rest to its start; one strip all round a curve that does not open.
    private static ImmutableArray<BoxingSection> Wrapped(CushionSpecification cushion, Circuit circuit, EdgeFinish seam) =>
        Opens(cushion.Closure) || cushion.Outline.HasCorners
            ?
            [
                BoxingSection.Closing(cushion.Closure, circuit.Section, cushion.BoxingHeight, PartName.Side(EdgeName.Back), seam),
                BoxingSection.Plain(PartName.Boxing, circuit.Rest, cushion.BoxingHeight, seam),
            ]
            : [BoxingSection.Plain(PartName.Boxing, [.. circuit.Section, .. circuit.Rest], cushion.BoxingHeight, seam)];

    // A panel for each stretch, but one section for the whole of an opening closure.
    private static IEnumerable<BoxingSection> Cornered(CushionSpecification cushion, Circuit circuit, EdgeFinish seam)
    {
        foreach (OutlineSide run in circuit.All)
        {
            if (!Opens(cushion.Closure) || !circuit.Section.Contains(run))
            {
                yield return BoxingSection.Plain(PartName.Side(run.Name), [run], cushion.BoxingHeight, seam);
            }
            else if (run == circuit.Section[0])
            {
                yield return BoxingSection.Closing(cushion.Closure, circuit.Section, cushion.BoxingHeight, default, seam);
            }
        }
    }

    // Whether the boxing has a section of its own for the closure: a gap in a seam needs none.
    private static bool Opens(ClosureSpecification closure) =>
        closure is ZipperClosure or OverlappingClosure && closure.Side != Side.Bottom;
}
