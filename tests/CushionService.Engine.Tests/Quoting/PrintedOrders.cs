using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Tests.Quoting;

/// <summary>Generated orders on printed fabric: every fabric has a repeat, both ways or one, its motif known or not, and a grain; every
/// cushion is matched in some way.</summary>
internal static class PrintedOrders
{
    public static OrderSpecification Order(int number)
    {
        var random = new Random(number);
        OrderSpecification order = GeneratedOrders.Order(number);
        return order with
        {
            Fabrics = [.. order.Fabrics.Select(fabric => fabric with { Repeat = Repeat(random), Grain = (Grain)random.Next(2) })],
            Cushions = [.. order.Cushions.Select(cushion => cushion with { Match = Match(random) })],
        };
    }

    /// <summary>The order with the motif of every fabric at a share of its repeat.</summary>
    public static OrderSpecification At(OrderSpecification order, int percentAcross, int percentAlong) =>
        order with
        {
            Fabrics =
            [
                .. order.Fabrics.Select(fabric =>
                    fabric with
                    {
                        Repeat = fabric.Repeat! with
                        {
                            MotifX = fabric.Repeat.MotifX ?? Share(fabric.Repeat.Width, percentAcross),
                            MotifY = fabric.Repeat.MotifY ?? Share(fabric.Repeat.Length, percentAlong),
                        },
                    }
                ),
            ],
        };

    private static Length? Share(Length? repeat, int percent) =>
        repeat is { } length ? Length.FromNanometres(length.Nanometres * percent / 100) : null;

    private static RepeatSpecification Repeat(Random random)
    {
        int kind = random.Next(5);
        Length? length = kind == 0 ? null : In(random.Next(4, 110) / 4m),
            width = kind == 1 ? null : In(random.Next(8, 110) / 4m);
        bool both = length is not null && width is not null;
        return new RepeatSpecification(length, width, both && random.Next(2) == 0 ? DropKind.Half : DropKind.Straight)
        {
            MotifX = width is not null && random.Next(3) == 0 ? In(random.Next(0, 120) / 4m) : null,
            MotifY = length is not null && random.Next(3) == 0 ? In(random.Next(0, 120) / 4m) : null,
        };
    }

    private static MatchSpecification Match(Random random)
    {
        FaceMatch faces = random.Next(6) == 0 ? FaceMatch.Free : FaceMatch.Centred;
        return new MatchSpecification(
            faces,
            random.Next(4) == 0 ? UndersideMatch.Free : UndersideMatch.AsTop,
            faces == FaceMatch.Free ? BoxingMatch.Free : (BoxingMatch)random.Next(3)
        );
    }
}
