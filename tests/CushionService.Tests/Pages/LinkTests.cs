using System.Net;
using System.Text.RegularExpressions;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Pages;

/// <summary>Every link of every document leads somewhere, in the repository and in the guide that the service shows.</summary>
public sealed partial class LinkTests(RunningService service) : IClassFixture<RunningService>
{
    public static TheoryData<string> Documents => [.. MarkdownDocuments.All];

    public static TheoryData<string> GuidePages =>
        [.. MarkdownDocuments.All.Where(path => Path.GetDirectoryName(path) == Path.Combine("src", "CushionService", "docs"))];

    [Theory]
    [MemberData(nameof(Documents))]
    public void Every_link_of_a_document_leads_to_a_file_and_a_heading(string document)
    {
        foreach (string link in MarkdownDocuments.Links(document).Where(link => !link.Contains("://", StringComparison.Ordinal)))
        {
            string[] parts = link.Split('#');
            string target =
                parts[0].Length == 0
                    ? document
                    : Path.GetRelativePath(
                        Repository.Root,
                        Path.GetFullPath(Path.Combine(Repository.Root, Path.GetDirectoryName(document)!, parts[0]))
                    );
            Assert.True(Path.Exists(Path.Combine(Repository.Root, target)), $"{document} links to {link}, which is not there.");
            Assert.True(
                parts.Length == 1 || MarkdownDocuments.Anchors(target).Contains(parts[1]),
                $"{document} links to {link}, and {target} has no such heading."
            );
        }
    }

    [Theory]
    [MemberData(nameof(GuidePages))]
    public async Task Every_page_of_the_guide_is_shown_and_its_links_lead_to_pages(string document)
    {
        Uri page = new(service.Http.BaseAddress!, $"/guide/{Path.GetFileName(document)}");
        string html = await service.Http.GetStringAsync(page);
        Assert.Contains("<h1", html, StringComparison.Ordinal);
        Assert.DoesNotContain("](", Code().Replace(html, ""), StringComparison.Ordinal);
        foreach (Match link in Target().Matches(html))
        {
            Uri target = new(page, WebUtility.HtmlDecode(link.Groups["target"].Value));
            if (target.Authority == page.Authority)
            {
                using HttpResponseMessage answer = await service.Http.GetAsync(target);
                Assert.True(answer.IsSuccessStatusCode || answer.StatusCode == HttpStatusCode.MovedPermanently, $"{document}: {target}");
            }
        }
    }

    [GeneratedRegex("""(href|src)="(?<target>[^"]+)""")]
    private static partial Regex Target();

    [GeneratedRegex("<code.*?</code>", RegexOptions.Singleline)]
    private static partial Regex Code();
}
