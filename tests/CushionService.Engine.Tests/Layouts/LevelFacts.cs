using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Tests.Layouts;

/// <summary>A boxing that is matched all round carries its pattern on one level: bands meet at every upright corner and join (common
/// practice, no source).</summary>
public sealed class LevelFacts
{
    private static readonly MatchSpecification AllRound = MatchSpecification.Usual with { Boxing = BoxingMatch.AllRound };

    public static TheoryData<string, Outline, ClosureSpecification, BoxingJoins> Shapes =>
        new()
        {
            { "circle", new CircleOutline(In(16)), BackZipper, BoxingJoins.Back },
            { "circle, hooks", new CircleOutline(In(16)), HookAndLoop(0.5m, 1), BoxingJoins.Back },
            { "oval", new OvalOutline(In(24), In(17)), BackZipper, BoxingJoins.Back },
            { "trapezoid, hooks", Slanted, HookAndLoop(0.5m, 1), BoxingJoins.Corners },
            { "trapezoid", Slanted, BackZipper, BoxingJoins.Back },
            { "hexagon", new RegularPolygonOutline(6, In(14)), HookAndLoop(0.5m, 1), BoxingJoins.Corners },
            { "pentagon", new RegularPolygonOutline(5, In(14)), BackZipper with { Return = Length.Zero }, BoxingJoins.Corners },
            { "u", new UOutline(In(36), In(21), In(10), In(6)), HandSewn, BoxingJoins.Corners },
            { "tee", new TeeOutline(In(36), In(23), In(4), In(6)), HandSewn, BoxingJoins.Corners },
            { "rectangle", new RectangleOutline(In(14), In(16)), BackZipper, BoxingJoins.Corners },
        };

    private static TrapezoidOutline Slanted => new(In(24), In(18), In(18), In(3));

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Bands_are_level_at_every_corner_and_join(string shape, Outline outline, ClosureSpecification closure, BoxingJoins joins)
    {
        FabricSpecification bands = Fabric with { Repeat = new RepeatSpecification(In(10), null, DropKind.Straight) };
        CushionSpecification box = Boxed(1, 1, 4, closure, joins) with { Outline = outline, Match = AllRound };

        AssertLevel(shape, box, bands);
    }

    [Fact]
    public void A_square_repeat_is_level_too()
    {
        FabricSpecification print = Fabric with { Repeat = new RepeatSpecification(In(12), In(12), DropKind.Straight) };

        AssertLevel("square repeat", Boxed(14, 16, 3, HandSewn) with { Match = AllRound }, print);
    }

    [Fact]
    public void A_wedge_is_level_with_its_low_front()
    {
        FabricSpecification bands = Fabric with { Repeat = new RepeatSpecification(In(10), null, DropKind.Straight) };
        CushionSpecification wedge = Boxed(14, 12, 6, BackZipper with { Return = Length.Zero }) with
        {
            Construction = Construction.Wedge,
            FrontThickness = In(1),
            Match = AllRound,
        };

        AssertLevel("wedge", wedge, bands);
    }

    // From the underside up, modulo the repeat: every panel begins there but the upper strip of a closure.
    private static void AssertLevel(string shape, CushionSpecification box, FabricSpecification fabric)
    {
        Panel[] boxing = [.. Drafting.Of(Order(box, fabric)).Patterns[0].Panels.Where(panel => panel.Role == FabricRole.Sides)];
        Length top = boxing.Max(panel => panel.Height);
        Length whole = box.Thickness > top ? box.Thickness : top;
        double repeat = fabric.Repeat!.Length!.Value.Nanometres;
        double[] levels =
        [
            .. boxing.Select(panel =>
                (double)
                    (
                        panel.Match!.Value.Y
                        + (panel.Part.Kind is PartKind.ZipperUpper or PartKind.ClosureUpper ? whole - panel.Height : Length.Zero)
                    ).Nanometres
            ),
        ];

        Assert.True(boxing.Length > 1, shape);
        Assert.All(levels, level => Assert.InRange(Math.Abs(Math.IEEERemainder(level - levels[0], repeat)), 0, 1000));
    }
}
