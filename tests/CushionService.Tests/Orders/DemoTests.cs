using System.Reflection;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Desk;
using CushionService.Json;
using CushionService.Tests.PriceBooks;

namespace CushionService.Tests.Orders;

/// <summary>The example orders of a small library's reading nook.</summary>
public sealed class DemoTests
{
    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "Demo");
    private static readonly OrderDesk Desk = new(BookFolder.StoreOf(Path.Combine(Folder, "PriceBooks")));

    public static TheoryData<string> Files =>
        [.. Directory.GetFiles(Folder, "*.json").Select(Path.GetFileName).Order(StringComparer.Ordinal).Cast<string>()];

    [Theory]
    [MemberData(nameof(Files))]
    public void An_example_order_gets_a_whole_quote(string file)
    {
        QuoteAnswer quote = Quote(file);

        Assert.Empty(quote.Warnings.Select(warning => warning.Detail));
        Assert.Empty(quote.Cost!.Unpriced);
        IEnumerable<string> parts =
        [
            .. quote.Cost.Lines.Select(line => line.Amount),
            .. quote.Cost.Labour.Select(line => line.Amount),
            .. quote.Cost.Additions.Select(addition => addition.Amount),
        ];
        Assert.Equal(quote.Cost.Total, parts.Sum(decimal.Parse).ToString("F2"));
        Assert.Equal(quote.Cost.Total, quote.Cost.Shares.Sum(share => decimal.Parse(share.Amount)).ToString("F2"));
        Assert.All(quote.Layouts, layout => Assert.True(layout.LowerBound <= layout.Length));
        Assert.Equal(quote.Layouts.Count, quote.Yardage.Count);
        Assert.NotEmpty(quote.Steps);
        Assert.NotEmpty(quote.Cautions);
    }

    [Fact]
    public void The_nook_has_a_bench_a_floor_cushion_and_two_pillows() =>
        Assert.Equal(
            [("bench", 1), ("floor", 1), ("pillow", 2)],
            Read("reading-nook.json").Cushions!.Select(cushion => (cushion.Id!, cushion.Quantity ?? 1))
        );

    [Fact]
    public void The_floor_cushion_is_cut_from()
    {
        // Sizes and 1/2 in seams; hemmed strips (3 + 1 1/4) / 2 + 2 × 1/2 + 1/2; strap 4 × 1 1/4 by 10 1/2 + 2 × 1/2;
        // its marks (23 − 9 3/4) / 2 from each end of the front strip.
        PieceAnswer[] pieces = [.. Quote("reading-nook.json").Pieces.Where(piece => piece.Cushion == "floor")];

        Assert.Equal(
            [
                "top 23 × 21",
                "bottom 23 × 21",
                "front 23 × 4",
                "right 21 × 4",
                "closure-upper 23 × 3.625",
                "closure-lower 23 × 3.625",
                "left 21 × 4",
                "handle 5 × 11.5",
            ],
            pieces.Select(piece => FormattableString.Invariant($"{piece.Part} {piece.Width} × {piece.Length}"))
        );
        Assert.Equal(
            [6.625, 16.375],
            pieces
                .Single(piece => piece.Part == "front")
                .Marks.Where(mark => mark.Kind == Engine.Patterns.Panels.MarkKind.HandleEnd)
                .Select(mark => mark.X)
        );
    }

    [Fact]
    public void Every_field_of_an_order_stands_in_some_example()
    {
        var used = new HashSet<string>();
        foreach (string file in Directory.GetFiles(Folder, "*.json"))
        {
            using JsonDocument order = JsonDocument.Parse(File.ReadAllText(file));
            Collect(order.RootElement, typeof(Order), used);
        }

        string[] fields =
        [
            .. typeof(Order)
                .Assembly.GetTypes()
                .Where(type => type.Namespace == typeof(Order).Namespace && type is { IsPublic: true, IsClass: true })
                .SelectMany(type => ContractJson.Options.GetTypeInfo(type).Properties.Select(NameOf)),
        ];
        // What one has and what one might take belong to the calls that ask whether it fits and what is cheaper; a quote refuses them.
        Assert.DoesNotContain(
            fields.Except(used),
            field =>
                !field.StartsWith("Candidate.", StringComparison.Ordinal)
                && !field.StartsWith("Offcut.", StringComparison.Ordinal)
                && field is not ("Fabric.onHand" or "Order.candidates")
        );
    }

    private static void Collect(JsonElement element, Type type, HashSet<string> used)
    {
        if (ContractJson.ElementOf(type) is { } item)
        {
            foreach (JsonElement entry in element.EnumerateArray())
            {
                Collect(entry, item, used);
            }
        }
        else if (ContractJson.Options.GetTypeInfo(type) is { Kind: JsonTypeInfoKind.Object } record)
        {
            foreach (JsonProperty member in element.EnumerateObject())
            {
                JsonPropertyInfo property = record.Properties.Single(property => property.Name == member.Name);
                used.Add(NameOf(property));
                Collect(member.Value, property.PropertyType, used);
            }
        }
    }

    // What cushions and bays have in common is one field.
    private static string NameOf(JsonPropertyInfo property) =>
        $"{((MemberInfo)property.AttributeProvider!).DeclaringType!.Name}.{property.Name}";

    private static Order Read(string file) =>
        JsonSerializer.Deserialize<Order>(File.ReadAllText(Path.Combine(Folder, file)), ContractJson.Options)!;

    private static QuoteAnswer Quote(string file)
    {
        Outcome<QuoteAnswer> outcome = Desk.Handle(new(Read(file), []), Purposes.Quote, CancellationToken.None);
        Assert.True(
            outcome.Answered,
            string.Join('\n', outcome.Refusal?.Violations.Select(violation => violation.Detail.ToString()) ?? [])
        );
        return outcome.Answer;
    }
}
