using System.Diagnostics;
using System.Text.Json;
using System.Text.Json.Nodes;
using CushionService.Contract.Orders;
using CushionService.Desk;
using CushionService.Json;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Pages;

/// <summary>The README's order is one of the examples; what it and the guide show of the answer is what the service answers.</summary>
public sealed class ReadmeTests
{
    private const string Readme = "README.md",
        Answer = "src/CushionService/docs/answer.md";

    [Fact]
    public void The_order_is_the_example_of_a_pillow() =>
        Assert.True(
            JsonNode.DeepEquals(Order(), JsonNode.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Demo", "pillow.json"))))
        );

    [Fact]
    public void The_part_of_the_answer_is_the_service_s_own()
    {
        const string Start = "```json\n",
            End = "\n```";
        JsonNode shown = JsonNode.Parse(WrittenPart.Read(Readme, Start, End))!;
        WrittenPart.Between(Readme, Start, End, ExampleJson.Text(ExampleJson.Part(shown, Answered())!));
    }

    [Fact]
    public void The_guide_shows_the_whole_answer() =>
        WrittenPart.IsUpToDate(
            Answer,
            "answer",
            "```json\n"
                + Answered().ToJsonString(new JsonSerializerOptions(ContractJson.Options) { WriteIndented = true, NewLine = "\n" })
                + "\n```\n"
        );

    [Fact]
    public async Task Its_command_serves_an_optimized_build()
    {
        string project = Path.Combine(Repository.Root, WrittenPart.Read(Readme, "dotnet run --project ", " "));
        using Process evaluated = Process.Start(
            new ProcessStartInfo("dotnet", ["msbuild", project, "-getProperty:Optimize"]) { RedirectStandardOutput = true }
        )!;
        Assert.Equal("true", (await evaluated.StandardOutput.ReadToEndAsync()).Trim());
    }

    private static JsonNode Order() => JsonNode.Parse(WrittenPart.Read(Readme, "-d '\n", "\n'"))!;

    private static JsonNode Answered() =>
        JsonSerializer.SerializeToNode(
            new OrderDesk()
                .Handle(new(Order().Deserialize<Order>(ContractJson.Options), []), Purposes.Quote, CancellationToken.None)
                .Answer,
            ContractJson.Options
        )!;
}
