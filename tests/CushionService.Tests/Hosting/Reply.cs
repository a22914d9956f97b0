using System.Text.Json.Nodes;
using CushionService.Contract;

namespace CushionService.Tests.Hosting;

/// <summary>What comes back from REST, read.</summary>
internal static class Reply
{
    public static async Task<JsonObject> JsonAsync(this HttpResponseMessage response) =>
        JsonNode.Parse(await response.Content.ReadAsByteArrayAsync())!.AsObject();

    /// <summary>The problem that a response must be, whole and well-formed.</summary>
    public static async Task<JsonObject> ProblemAsync(this HttpResponseMessage response)
    {
        string body = await response.Content.ReadAsStringAsync();
        Assert.True((int)response.StatusCode is >= 400 and < 600, $"{response.StatusCode}: {body}");
        Assert.Equal("application/problem+json", response.Content.Headers.ContentType?.MediaType);
        JsonObject problem = JsonNode.Parse(body)!.AsObject();
        Assert.Equal((int)response.StatusCode, problem["status"]!.GetValue<int>());
        Assert.EndsWith($"/problems/{(string?)problem["code"]}", problem["type"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.True(Uri.IsWellFormedUriString((string?)problem["type"], UriKind.Absolute));
        Assert.True(CodeRegister.Find((string)problem["code"]!)?.Uses.HasFlag(CodeUse.Problem), $"No such code of a problem: {body}");
        Assert.NotEmpty(problem["title"]!.GetValue<string>());
        Assert.NotEmpty(problem["traceId"]!.GetValue<string>());
        foreach (JsonNode? violation in problem["violations"]!.AsArray())
        {
            Assert.Matches("^(/.*)?$", violation!["pointer"]!.GetValue<string>());
            Assert.True(
                CodeRegister.Find((string)violation["code"]!)?.Uses.HasFlag(CodeUse.Violation),
                $"No such code of a violation: {body}"
            );
            Assert.NotEmpty(violation["detail"]!.GetValue<string>());
        }

        return problem;
    }

    /// <summary>The violations of a problem, each as place and code.</summary>
    public static string[] Violations(this JsonObject problem) =>
        [.. problem["violations"]!.AsArray().Select(violation => $"{violation!["pointer"]} {violation["code"]}")];
}
