using System.Text.RegularExpressions;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Contract;

/// <summary>A release has one number: that of the assemblies, wherever it is written.</summary>
public sealed class ReleaseTests
{
    private static readonly string Release = Regex
        .Match(Repository.Read("Directory.Build.props"), "<Version>(?<number>[^<]+)</Version>")
        .Groups["number"]
        .Value;

    [Theory]
    [InlineData("openapi/v1.json", @"^    ""version"": ""(?<number>[^""]+)""")]
    [InlineData("CHANGELOG.md", @"\A.*?^## (?<number>[\d.]+)")]
    [InlineData("src/clients/javascript/package.json", @"""version"": ""(?<number>[^""]+)""")]
    [InlineData("src/clients/cushion-estimate/package.json", @"""version"": ""(?<number>[^""]+)""")]
    [InlineData("src/clients/examples/csharp/Quote.csproj", @"Include=""CushionService.Client"" Version=""(?<number>[^""]+)""")]
    [InlineData("src/CushionService/deploy/compose/compose.yaml", @"image: cushionservice:(?<number>\S+)")]
    [InlineData("src/CushionService/deploy/kubernetes/overlays/shop/kustomization.yaml", @"newTag: (?<number>[\d.]+)")]
    [InlineData("src/CushionService/deploy/kubernetes/overlays/small/kustomization.yaml", @"newTag: (?<number>[\d.]+)")]
    [InlineData("src/CushionService/docs/clients.md", @"cushionservice:(?<number>\d+\.\d+\.\d+)")]
    [InlineData("src/CushionService/docs/operating.md", @"cushionservice:(?<number>\d+\.\d+\.\d+)")]
    public void A_file_names_this_release(string file, string pattern)
    {
        MatchCollection found = Regex.Matches(Repository.Read(file), pattern, RegexOptions.Multiline | RegexOptions.Singleline);
        Assert.NotEmpty(found);
        Assert.All(found, match => Assert.Equal(Release, match.Groups["number"].Value));
    }

    [Fact]
    public void The_baseline_is_of_this_major_version()
    {
        string major = Release.Split('.')[0];
        Assert.Contains($"\"version\": \"{major}.", Repository.Read("tests", "contract", "baseline", "v1.json"), StringComparison.Ordinal);
        Assert.Contains($"\"/v{major}/", Repository.Read("openapi", "v1.json"), StringComparison.Ordinal);
    }
}
