using System.Net;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Access;

/// <summary>What the answers tell a browser.</summary>
public sealed class BrowserTests : IDisposable
{
    private readonly RunningService _service = new(_ => { }, false, ("Access:Origins:0", "https://shop.example"));

    [Theory]
    [InlineData("https://shop.example", true)]
    [InlineData("https://shop.example.attacker.example", false)]
    [InlineData("http://shop.example", false)]
    [InlineData("null", false)]
    public async Task A_page_of_a_listed_site_may_call_and_no_other(string origin, bool may)
    {
        using HttpRequestMessage asking = new(HttpMethod.Options, new Uri("/v1/yardage", UriKind.Relative));
        asking.Headers.Add("Origin", origin);
        asking.Headers.Add("Access-Control-Request-Method", "POST");
        asking.Headers.Add("Access-Control-Request-Headers", "content-type");
        using HttpResponseMessage asked = await _service.Http.SendAsync(asking);
        using HttpRequestMessage calling = new(HttpMethod.Get, new Uri("/v1/catalogue", UriKind.Relative));
        calling.Headers.Add("Origin", origin);
        using HttpResponseMessage called = await _service.Http.SendAsync(calling);

        Assert.Equal(
            may,
            asked.Headers.TryGetValues("Access-Control-Allow-Origin", out IEnumerable<string>? allowed) && allowed.Single() == origin
        );
        Assert.Equal(may, called.Headers.Contains("Access-Control-Allow-Origin"));
        Assert.False(called.Headers.Contains("Access-Control-Allow-Credentials"));
    }

    [Theory]
    [InlineData("/v1/catalogue")]
    [InlineData("/v1/nothing")]
    [InlineData("/health/live")]
    [InlineData("/docs/index.html")]
    [InlineData("/cushionservice.v1.CushionService/Quote")]
    public async Task Every_answer_is_closed_to_guessing_and_framing(string path)
    {
        using HttpResponseMessage response = await _service.Http.GetAsync(new Uri(path, UriKind.Relative));

        Assert.Equal("nosniff", response.Headers.GetValues("X-Content-Type-Options").Single());
        Assert.Equal("no-referrer", response.Headers.GetValues("Referrer-Policy").Single());
        Assert.Contains("frame-ancestors 'none'", response.Headers.GetValues("Content-Security-Policy").Single(), StringComparison.Ordinal);
        Assert.False(response.Headers.Contains("Server"));
        Assert.False(response.Headers.Contains("X-Powered-By"));
        Assert.False(response.Headers.Contains("Strict-Transport-Security"), "HSTS belongs to https alone (RFC 6797, section 7.2).");
    }

    [Fact]
    public async Task Over_https_a_browser_is_told_to_stay_there()
    {
        using HttpResponseMessage response = await _service.Http.GetAsync(new Uri("https://nook.example/v1/catalogue"));

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Contains("max-age=", response.Headers.GetValues("Strict-Transport-Security").Single(), StringComparison.Ordinal);
    }

    public void Dispose() => _service.Dispose();
}
