using System.Text.Json;
using System.Text.Json.Nodes;
using CushionService.Contract.Orders;
using CushionService.Rest;

namespace CushionService.Tests.Orders;

/// <summary>The README's order is one of the examples, and its answer is the one that the service gives.</summary>
public sealed class ReadmeTests
{
    private static readonly string Readme = File.ReadAllText(Path.Combine(Root(), "README.md"));

    [Fact]
    public void The_order_is_the_example_of_a_pillow() =>
        Assert.True(
            JsonNode.DeepEquals(Order, JsonNode.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Demo", "pillow.json"))))
        );

    [Fact]
    public void The_answer_is_the_service_s_own()
    {
        var answer = new OrderDesk().Quote(Order.Deserialize<Order>(Json.Options)!, CancellationToken.None).Answer;

        Assert.Equal(
            Between("```json\n", "\n```").ToJsonString(Json.Options),
            JsonSerializer.SerializeToNode(answer, Json.Options)!.ToJsonString(Json.Options)
        );
    }

    private static JsonNode Order => Between("-d '\n", "\n'");

    private static JsonNode Between(string start, string end)
    {
        int from = Readme.IndexOf(start, StringComparison.Ordinal) + start.Length;
        return JsonNode.Parse(Readme[from..Readme.IndexOf(end, from, StringComparison.Ordinal)])!;
    }

    private static string Root()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder!.FullName, "CushionService.sln")))
        {
            folder = folder.Parent;
        }

        return folder.FullName;
    }
}
