using System.Text.Json.Nodes;
using CushionService.Bulk;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Bulk;

/// <summary>A file of orders becomes a file of answers, which are those of a stream.</summary>
public sealed class BulkTests(RunningService service) : IClassFixture<RunningService>, IDisposable
{
    private const int Count = 60;

    private readonly string _folder = Directory.CreateTempSubdirectory("bulk").FullName;

    private string Orders => Path.Combine(_folder, "orders.ndjson");

    private string Answers => Path.Combine(_folder, "answers.ndjson");

    [Fact]
    public async Task The_lines_are_those_of_a_stream()
    {
        File.WriteAllBytes(Orders, BulkOrders.File(Count));
        Assert.Equal($"{Count} answers, {Count} of them new, 3 of these problems.", await RunAsync(0, Orders, Answers));

        using HttpResponseMessage stream = await service.PostAsync("quotes/stream", BulkOrders.File(Count), "application/x-ndjson");
        string[] theirs = Lines(await stream.Content.ReadAsStringAsync()),
            ours = Lines(File.ReadAllText(Answers));
        Assert.Equal(Count, ours.Length);
        foreach ((string one, string other) in ours.Zip(theirs))
        {
            Assert.Equal(WithoutTrace(other), WithoutTrace(one));
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(5_000)]
    [InlineData(100_000)]
    public async Task A_run_that_was_stopped_goes_on_where_it_was(int bytes)
    {
        File.WriteAllBytes(Orders, BulkOrders.File(Count));
        await RunAsync(0, Orders, Answers);
        byte[] whole = File.ReadAllBytes(Answers);
        File.WriteAllBytes(Answers, whole[..bytes]);

        int kept = whole[..bytes].Count(sign => sign == '\n');
        Assert.StartsWith($"{Count} answers, {Count - kept} of them new", await RunAsync(0, Orders, Answers), StringComparison.Ordinal);
        Assert.Equal(whole, File.ReadAllBytes(Answers));
        Assert.StartsWith($"{Count} answers, 0 of them new", await RunAsync(0, Orders, Answers), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_table_has_the_parameters_of_an_estimate_as_columns()
    {
        string table = Path.Combine(_folder, "orders.csv");
        File.WriteAllText(
            table,
            """
            reference,units,construction,outline,width,depth,thickness,fabricWidth
            "bench, ""long""
            and low",in,boxed,rectangle,44,"18 1/2",3,54

            ,,,,,,,
            pillow,cm,knife-edge,rectangle,45,45,,140
            none,cm,knife-edge,rectangle,-1,45,,140
            """
        );
        await RunAsync(0, table, Answers);
        JsonNode[] answers = [.. Lines(File.ReadAllText(Answers)).Select(line => JsonNode.Parse(line)!)];
        Assert.Equal(3, answers.Length);
        Assert.Equal("bench, \"long\"\nand low", (string?)answers[0]["reference"]);
        Assert.Equal(18.5, (double?)answers[0]["cushions"]![0]!["finished"]!["depth"]);
        Assert.Equal("pillow", (string?)answers[1]["reference"]);
        Assert.Equal(7, (int?)answers[2]["line"]);
        Assert.Equal("/width", (string?)answers[2]["violations"]![0]!["pointer"]);
    }

    [Theory]
    [InlineData]
    [InlineData("orders.ndjson")]
    [InlineData("no-such-file.ndjson", "answers.ndjson")]
    [InlineData("a", "b", "c")]
    public async Task A_command_line_that_cannot_be_read_is_answered_with_what_can(params string[] args) =>
        Assert.StartsWith("CushionService --bulk", await RunAsync(64, args), StringComparison.Ordinal);

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private static async Task<string> RunAsync(int expected, params string[] args)
    {
        StringWriter output = new();
        Assert.Equal(expected, await BulkProgram.RunAsync(args, output));
        return output.ToString().Trim();
    }

    private static string[] Lines(string text) => text.Split('\n', StringSplitOptions.RemoveEmptyEntries);

    // The trace is another, and a file knows no address of the service.
    private static string WithoutTrace(string line)
    {
        if (!line.StartsWith("{\"type\"", StringComparison.Ordinal))
        {
            return line;
        }

        JsonObject problem = JsonNode.Parse(line)!.AsObject();
        problem.Remove("traceId");
        problem["type"] = new Uri(new Uri("http://localhost"), (string)problem["type"]!).PathAndQuery;
        return problem.ToJsonString();
    }
}
