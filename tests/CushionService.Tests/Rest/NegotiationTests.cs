using System.Net;
using System.Text;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Rest;

/// <summary>An answer comes in the form that the caller prefers (RFC 9110, section 12.5.1).</summary>
public sealed class NegotiationTests(RunningService service) : IClassFixture<RunningService>
{
    private const string Order = """
        {
          "units": "in",
          "pieces": [{ "id": "runner", "fabric": "main", "width": 12, "length": 40 }, { "id": "edge", "fabric": "trim", "width": 3,
            "length": 40 }],
          "fabrics": [
            { "id": "main", "width": 54, "sold": { "unit": "yd", "step": "1/8" } },
            { "id": "trim", "width": 45, "sold": { "unit": "yd", "step": "1/8" } }
          ]
        }
        """;

    [Theory]
    [InlineData("quotes", "*/*", "application/json")]
    [InlineData("quotes", "text/html", "text/html")]
    [InlineData("quotes", "TEXT/HTML", "text/html")]
    [InlineData("quotes", "text/html, application/json", "application/json")]
    [InlineData("quotes", "text/html;q=0.9, application/json;q=0.8", "text/html")]
    [InlineData("quotes", "text/*;q=0.2, application/json;q=0.1", "text/html")]
    [InlineData("quotes", "*/*;q=0.5, application/json;q=0.1", "text/html")]
    [InlineData("quotes", "application/xhtml+xml, */*;q=0.1", "application/json")]
    [InlineData("layouts?fabric=trim", "image/svg+xml", "image/svg+xml")]
    [InlineData("layouts?fabric=trim", "image/*", "image/svg+xml")]
    [InlineData("layouts?fabric=trim", "application/json", "application/json")]
    [InlineData("quotes", "application/pdf", "application/pdf")]
    [InlineData("quotes?detail=full", "application/pdf", "application/pdf")]
    [InlineData("quotes?detail=project&paper=a3", "text/html", "text/html")]
    [InlineData("layouts", "text/csv", "text/csv")]
    [InlineData("pieces", "text/html", "text/html")]
    [InlineData("pieces", "text/csv", "text/csv")]
    [InlineData("pieces", "image/vnd.dxf", "image/vnd.dxf")]
    [InlineData("quotes", "text/csv", "text/csv")]
    [InlineData("labels", "*/*", "text/html")]
    [InlineData("labels?paper=letter-large", "application/pdf", "application/pdf")]
    [InlineData("pieces?paper=roll-36in&piece=edge", "application/pdf", "application/pdf")]
    public async Task The_preferred_form_that_there_is_comes_back(string call, string accept, string expected)
    {
        using HttpResponseMessage response = await PostAsync(call, accept);

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Equal(expected, response.Content.Headers.ContentType?.MediaType);
        string start = expected switch
        {
            "text/html" => "<!DOCTYPE html>",
            "image/svg+xml" => "<",
            "image/vnd.dxf" => "  0\r\nSECTION",
            "text/csv" => call switch
            {
                "quotes" => "item,",
                "layouts" => "fabric,",
                _ => "number,",
            },
            "application/pdf" => "%PDF-",
            _ => "{",
        };
        Assert.StartsWith(start, await response.Content.ReadAsStringAsync(), StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    [InlineData("quotes", "image/svg+xml", HttpStatusCode.NotAcceptable)]
    [InlineData("yardage", "text/html", HttpStatusCode.NotAcceptable)]
    [InlineData("layouts", "image/svg+xml", HttpStatusCode.BadRequest)]
    [InlineData("layouts?fabric=silk", "image/svg+xml", HttpStatusCode.BadRequest)]
    [InlineData("labels", "application/json", HttpStatusCode.NotAcceptable)]
    [InlineData("labels?paper=a7", "text/html", HttpStatusCode.BadRequest)]
    [InlineData("quotes?detail=short", "text/html", HttpStatusCode.BadRequest)]
    [InlineData("quotes?paper=roll-36in", "application/pdf", HttpStatusCode.BadRequest)]
    [InlineData("pieces?paper=a7", "application/pdf", HttpStatusCode.BadRequest)]
    [InlineData("pieces?paper=roll-3in", "text/html", HttpStatusCode.BadRequest)]
    [InlineData("pieces?piece=curtain", "application/pdf", HttpStatusCode.BadRequest)]
    [InlineData("pieces?piece=curtain", "image/vnd.dxf", HttpStatusCode.BadRequest)]
    public async Task A_form_that_there_is_not_is_a_problem(string call, string accept, HttpStatusCode expected)
    {
        using HttpResponseMessage response = await PostAsync(call, accept);

        Assert.Equal(expected, response.StatusCode);
        await response.ProblemAsync();
    }

    private async Task<HttpResponseMessage> PostAsync(string call, string accept)
    {
        using HttpRequestMessage request = new(HttpMethod.Post, $"/v1/{call}")
        {
            Content = new StringContent(Order, Encoding.UTF8, "application/json"),
        };
        Assert.True(request.Headers.TryAddWithoutValidation("Accept", accept));
        return await service.Http.SendAsync(request);
    }
}
