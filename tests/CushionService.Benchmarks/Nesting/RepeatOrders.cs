using System.Globalization;
using CushionService.Nesting;
using CushionService.Nesting.Solving;

namespace CushionService.Benchmarks.Nesting;

/// <summary>Generated orders on fabric with a repeat, straight and half drop: faces and front boxings lie on their phase.
/// Prints the saving over the rule of thumb. Every layout has passed the audit, phases included.</summary>
internal static class RepeatOrders
{
    private const int Orders = 300;

    public static void Print(FamilyRun run)
    {
        Console.WriteLine(
            $"repeats: {Orders} orders in quarter inches on fabric 54 in wide, against every aligned cut rounded up to whole repeats"
        );
        Console.WriteLine("  effort     mean saving %   longer than the rule");
        foreach (var effort in run.Efforts.OfType<Effort>().Where(effort => effort != Effort.Thorough || run.Every > 1))
        {
            var (saving, longer, orders) = (0.0, 0, 0);
            for (var order = 0; order < Orders; order += run.Every)
            {
                var problem = Problem(order);
                long rule = Nester.RuleOfThumb(problem);
                long length = Nester.Nest(problem, effort).Length;
                saving += 100.0 * (rule - length) / rule;
                longer += length > rule ? 1 : 0;
                orders++;
            }

            Console.WriteLine(
                string.Create(CultureInfo.InvariantCulture, $"  {effort, -9} {saving / orders, 14:F2} {longer, 9} of {orders}")
            );
        }
    }

    /// <summary>A generated order with a repeat.</summary>
    public static StripProblem Problem(int seed)
    {
        var random = new Random(seed);
        long across = seed % 3 == 0 ? 0 : random.Next(20, 110);
        long along = random.Next(20, 110);
        var pieces = new List<NestingPiece>();
        for (int kind = random.Next(2, 6); kind > 0; kind--)
        {
            bool aligned = random.Next(3) > 0;
            var phase = new Alignment(random.Next((int)Math.Max(across, 1)), random.Next((int)along));
            pieces.Add(
                new NestingPiece
                {
                    Width = random.Next(20, 105),
                    Length = random.Next(10, 110),
                    Quantity = random.Next(1, 5),
                    Alignment = aligned ? phase : null,
                }
            );
        }

        return new StripProblem
        {
            Width = 216,
            Pieces = [.. pieces],
            Repeat = new RepeatLattice(across, along, across > 0 && seed % 2 == 0 ? along / 2 : 0),
        };
    }
}
