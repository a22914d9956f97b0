using System.Diagnostics;
using System.Text;
using CushionService.Contract.Orders;
using CushionService.Desk;
using CushionService.Intake;
using CushionService.Json;
using CushionService.LoadTests.Generating;

namespace CushionService.LoadTests.Runs;

/// <summary>What it costs to take an order in, beside the whole yardage of it, and beside FluentValidation's rules for its fields
/// alone.</summary>
internal static class IntakeRun
{
    private const int Rounds = 7;

    /// <summary>Measures each in turn, and prints the medians.</summary>
    /// <param name="calls">How many calls a round.</param>
    public static void Run(int calls)
    {
        Order order = OrderText.Parse(Encoding.UTF8.GetBytes(Requests.OneCushion)).Order!;
        AttributeValidator<Order> validator = new();
        OrderDesk desk = new();
        if (OrderIntake.Read(order, null, Purpose.Making).Specification is not { } specification || !validator.Validate(order).IsValid)
        {
            throw new InvalidOperationException("The order is not sound.");
        }

        (string Name, Action Call)[] rows =
        [
            ("intake: every check, and the specification", () => OrderIntake.Read(order, null, Purpose.Making)),
            ("FluentValidation: a rule for each field, a validator for each part", () => validator.Validate(order)),
            (
                "the whole of a yardage call but its transport",
                () => desk.Handle(new ReceivedOrder(order, []), Purposes.Yardage, CancellationToken.None)
            ),
        ];
        List<(double Nanoseconds, long Bytes)>[] found = [.. rows.Select(_ => new List<(double, long)>())];
        for (int round = 0; round <= Rounds; round++)
        {
            for (int row = 0; row < rows.Length; row++)
            {
                found[row].Add(Measure(rows[row].Call, calls));
            }
        }

        Console.WriteLine($"{specification.Cushions.Length} cushion, {specification.Fabrics.Length} fabric; medians of {Rounds} rounds");
        for (int row = 0; row < rows.Length; row++)
        {
            // The first round compiles.
            (double Nanoseconds, long Bytes)[] sorted = [.. found[row].Skip(1).OrderBy(one => one.Nanoseconds)];
            Console.WriteLine($"{sorted[Rounds / 2].Nanoseconds / 1000, 8:0.00} µs {sorted[Rounds / 2].Bytes, 8} B  {rows[row].Name}");
        }
    }

    private static (double Nanoseconds, long Bytes) Measure(Action call, int calls)
    {
        long bytes = GC.GetAllocatedBytesForCurrentThread();
        long start = Stopwatch.GetTimestamp();
        for (int i = 0; i < calls; i++)
        {
            call();
        }

        return (Stopwatch.GetElapsedTime(start).TotalNanoseconds / calls, (GC.GetAllocatedBytesForCurrentThread() - bytes) / calls);
    }
}
