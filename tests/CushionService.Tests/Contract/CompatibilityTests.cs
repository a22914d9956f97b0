using System.Text.Json.Nodes;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Contract;

/// <summary>Callers of the previous release go on working: what it promised is still promised. A release replaces the baseline by its own
/// document.</summary>
public sealed class CompatibilityTests
{
    private static JsonNode Baseline => JsonNode.Parse(Repository.Read("tests", "contract", "baseline", "v1.json"))!;

    [Fact]
    public void The_document_breaks_no_caller_of_the_previous_release() =>
        Assert.Empty(ContractDifference.Breaking(Baseline, JsonNode.Parse(Repository.Read("openapi", "v1.json"))!));

    [Theory]
    [InlineData("/paths/~1v1~1fits", null, "is gone")]
    [InlineData("/paths/~1v1~1yardage/post/responses/200", null, "is gone")]
    [InlineData("/components/schemas/Order/properties/cushions", null, "is gone")]
    [InlineData("/components/schemas/YardageAnswer/properties/yardage", null, "is gone")]
    [InlineData("/components/schemas/Order/required/-", "\"reference\"", "is required")]
    [InlineData("/components/schemas/YardageAnswer/required/0", null, "is no longer required")]
    [InlineData("/components/schemas/Order/properties/reference/type", "\"integer\"", "has another type")]
    [InlineData("/components/schemas/Effort/enum/0", null, "no longer takes")]
    public void A_change_that_breaks_a_caller_is_seen(string pointer, string? value, string told)
    {
        JsonNode changed = Baseline.DeepClone();
        Change(changed, pointer, value);

        Assert.Contains(ContractDifference.Breaking(Baseline, changed), difference => difference.Contains(told, StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_new_breaks_nobody()
    {
        JsonNode changed = Baseline.DeepClone();
        Change(changed, "/paths/~1v1~1news", "{}");
        Change(changed, "/components/schemas/Order/properties/news", """{"type":"string"}""");
        Change(changed, "/components/schemas/YardageAnswer/properties/news", """{"type":"string"}""");

        Assert.Empty(ContractDifference.Breaking(Baseline, changed));
    }

    private static void Change(JsonNode document, string pointer, string? value)
    {
        string[] steps = [.. pointer[1..].Split('/').Select(step => step.Replace("~1", "/", StringComparison.Ordinal))];
        JsonNode holder = steps[..^1]
            .Aggregate(
                document,
                (node, step) => node[step] ?? throw new InvalidOperationException($"The baseline has no {step} of {pointer}.")
            );
        JsonNode? changed = value is null ? null : JsonNode.Parse(value);
        if (holder is JsonArray list)
        {
            if (steps[^1] == "-")
            {
                list.Add(changed);
            }
            else
            {
                list.RemoveAt(int.Parse(steps[^1]));
            }
        }
        else if (value is null)
        {
            Assert.True(holder.AsObject().Remove(steps[^1]), $"The baseline has no {pointer}.");
        }
        else
        {
            holder[steps[^1]] = changed;
        }
    }
}
