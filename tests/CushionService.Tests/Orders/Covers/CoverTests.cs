using System.Collections.Concurrent;
using System.Text.Json.Nodes;
using CushionService.Contract;
using CushionService.Engine.Layouts;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Tests.Orders.Covers;

/// <summary>What holds for every order, over generated ones of every construction, outline, closure, edging, repeat and unit.</summary>
public sealed class CoverTests
{
    private const int Count = 400;
    private static readonly ParallelOptions AsManyAsProcessors = new() { MaxDegreeOfParallelism = Environment.ProcessorCount };
    private const int Printed = 240;

    // Of the motif, as shares of the repeat.
    private static readonly (double Across, double Along)[] Positions = [(0.01, 0.99), (0.25, 0.6), (0.5, 0.5), (0.8, 0.15), (0.37, 0.02)];

    [Fact]
    public void Nothing_that_a_master_would_not_let_pass_is_in_any_quote()
    {
        var faults = new ConcurrentBag<string>();
        int quoted = 0;
        Parallel.For(
            0,
            Count,
            AsManyAsProcessors,
            number =>
            {
                if (CoverOrders.Order(number, "quick") is { } order)
                {
                    Interlocked.Increment(ref quoted);
                    QuotedCover cover = QuotedCover.Of(order);
                    foreach (string fault in CoverChecks.Faults(cover).Concat(CoverUse.Faults(cover)))
                    {
                        faults.Add($"{number} ({cover.Name}): {fault}");
                    }
                }
            }
        );
        Assert.True(faults.IsEmpty, string.Join(Environment.NewLine, faults.Order().Take(30).Prepend($"{faults.Count} faults")));
        Assert.True(quoted > Count * 3 / 4, $"Only {quoted} of {Count} orders are sound.");
    }

    [Fact]
    public void Every_construction_is_among_them()
    {
        var met = Enumerable
            .Range(0, Count)
            .Select(number => CoverOrders.Order(number, "quick"))
            .OfType<JsonObject>()
            .SelectMany(order => order["cushions"]!.AsArray().Select(cushion => cushion!["construction"]!.GetValue<string>()))
            .ToHashSet();
        Assert.Equal(Words<Construction>.All.Order(), met.Order());
    }

    /// <summary>With the motif known at a position, another for each order, no more is bought than was said to be enough for all.</summary>
    [Fact]
    public void What_is_bought_is_enough_wherever_the_motif_is()
    {
        var faults = new ConcurrentBag<string>();
        Parallel.For(
            0,
            Printed,
            AsManyAsProcessors,
            number =>
            {
                if (
                    CoverOrders.Order(number, "quick") is not { } order
                    || !order["fabrics"]!.AsArray().Any(fabric => fabric!["repeat"] is not null)
                )
                {
                    return;
                }

                (double across, double along) = Positions[number % Positions.Length];
                QuotedCover unknown = QuotedCover.Of(order),
                    known = QuotedCover.Of(At(order, across, along));
                foreach ((Yardage enough, Yardage needed) in unknown.Quote.Yardages.Zip(known.Quote.Yardages))
                {
                    if (needed.Sold > enough.Sold)
                    {
                        faults.Add($"{number} ({unknown.Name}) {enough.Layout.Fabric.Id}: {needed.Sold} is needed, {enough.Sold} said.");
                    }
                }
            }
        );
        Assert.True(faults.IsEmpty, string.Join(Environment.NewLine, faults.Order().Take(20)));
    }

    // Where the grain is open, known motifs may turn the cushion the other way: here it stays as it is.
    private static JsonObject At(JsonObject order, double across, double along)
    {
        JsonObject known = order.DeepClone().AsObject();
        known["effort"] = "standard";
        foreach (JsonObject fabric in known["fabrics"]!.AsArray().Select(fabric => fabric!.AsObject()))
        {
            if (fabric["repeat"] is not JsonObject repeat)
            {
                continue;
            }

            JsonObject motif = repeat["motif"] as JsonObject ?? [];
            repeat["motif"] = motif;
            Set(motif, "x", repeat["width"], across);
            Set(motif, "y", repeat["length"], along);
        }

        return known;

        static void Set(JsonObject motif, string name, JsonNode? size, double share)
        {
            if (size is not null && motif[name] is null)
            {
                motif[name] = Math.Round(size.GetValue<double>() * share, 3);
            }
        }
    }
}
