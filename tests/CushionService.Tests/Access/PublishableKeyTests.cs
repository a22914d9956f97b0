using System.Net;
using System.Text;
using CushionService.Access;
using CushionService.Tests.Hosting;
using Microsoft.Extensions.Options;

namespace CushionService.Tests.Access;

/// <summary>A key that is in a shop's pages: bound to their origins, at the shop's own prices, for the calls of a page alone.</summary>
public sealed class PublishableKeyTests : IDisposable
{
    private const string Key = "pk_reading-nook-0147",
        Shop = "https://shop.example";

    private static readonly string Books = Path.Combine(AppContext.BaseDirectory, "Demo", "PriceBooks");

    private static readonly string Pillow = Callers.Pillow.Replace(
        "\"id\":\"linen\"",
        "\"id\":\"linen\",\"item\":\"canvas-54\"",
        StringComparison.Ordinal
    );

    private readonly RunningService _service = new(
        _ => { },
        false,
        ("Access:Publishable:0:Name", "the nook"),
        ("Access:Publishable:0:Key", Key),
        ("Access:Publishable:0:Origins:0", Shop),
        ("Access:Publishable:0:PriceBook", "nook"),
        ("PriceBooks:Folder", Books)
    );

    [Theory]
    [InlineData("yardage", Shop, HttpStatusCode.OK)]
    [InlineData("quotes?fields=yardage,cost.total", Shop, HttpStatusCode.OK)]
    [InlineData("comparisons", Shop, HttpStatusCode.OK)]
    [InlineData("quotes", Shop, HttpStatusCode.Forbidden)]
    [InlineData("quotes?fields=yardage,cost", Shop, HttpStatusCode.Forbidden)]
    [InlineData("quotes?fields=yardage,steps", Shop, HttpStatusCode.Forbidden)]
    [InlineData("pieces", Shop, HttpStatusCode.Forbidden)]
    [InlineData("layouts", Shop, HttpStatusCode.Forbidden)]
    [InlineData("yardage", "https://shop.example.attacker.example", HttpStatusCode.Forbidden)]
    [InlineData("yardage", null, HttpStatusCode.Forbidden)]
    public async Task It_makes_the_calls_of_a_page_from_its_origins(string call, string? origin, HttpStatusCode expected)
    {
        string order =
            call == "comparisons"
                ? Pillow[..Pillow.LastIndexOf('}')]
                    + ",\"candidates\":[{\"fabric\":\"linen\",\"options\":[{\"id\":\"s\",\"item\":\"stripe-60\",\"width\":60}]}]}"
                : Pillow;
        using HttpResponseMessage response = await SendAsync(call, origin, order);

        Assert.Equal(expected, response.StatusCode);
    }

    [Theory]
    [InlineData("\"item\":\"canvas-54\"", "\"item\":\"canvas-54\",\"price\":{\"amount\":\"0.01\",\"per\":\"yd\"}", "/fabrics/0/price")]
    [InlineData("\"units\":\"in\"", "\"units\":\"in\",\"priceBook\":\"another\"", "/priceBook")]
    [InlineData("\"effort\":\"quick\"", "\"effort\":\"thorough\"", "/effort")]
    public async Task The_page_has_no_say_in_prices_and_effort(string part, string changed, string pointer)
    {
        string order = Pillow.Replace(part, changed, StringComparison.Ordinal);
        using HttpResponseMessage response = await SendAsync("quotes?fields=yardage,cost.total", Shop, order);

        Assert.Equal(HttpStatusCode.Forbidden, response.StatusCode);
        Assert.Contains($"{pointer} not-allowed", (await response.ProblemAsync()).Violations());
    }

    [Fact]
    public async Task The_price_is_that_of_the_shop_s_book()
    {
        using HttpResponseMessage response = await SendAsync("quotes?fields=cost.lines,cost.currency", Shop, Pillow);

        string answer = await response.Content.ReadAsStringAsync();
        Assert.Contains("\"unitPrice\":\"14.20\"", answer, StringComparison.Ordinal);
        Assert.Contains("\"currency\":\"USD\"", answer, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Its_origins_may_call_from_a_browser()
    {
        foreach ((string origin, bool may) in new[] { (Shop, true), ("https://other.example", false) })
        {
            using HttpRequestMessage asking = new(HttpMethod.Options, new Uri("/v1/quotes", UriKind.Relative));
            asking.Headers.Add("Origin", origin);
            asking.Headers.Add("Access-Control-Request-Method", "POST");
            asking.Headers.Add("Access-Control-Request-Headers", "content-type,x-api-key,accept-language");
            using HttpResponseMessage asked = await _service.Http.SendAsync(asking);
            Assert.Equal(may, asked.Headers.Contains("Access-Control-Allow-Origin"));
        }
    }

    [Theory]
    [InlineData(null, "pk_reading-nook-0147", "https://shop.example", "Name is required")]
    [InlineData("nook", "short", "https://shop.example", "Key must be 16 to 200")]
    [InlineData("nook", "pk_reading-nook-0147", "https://shop.example/shop", "Origins must list")]
    public void A_wrong_configuration_says_where(string? name, string key, string origin, string fault)
    {
        AccessOptions options = new()
        {
            Publishable =
            [
                new PageKeyOptions
                {
                    Name = name,
                    Key = key,
                    Origins = [origin],
                },
            ],
        };
        string message = Assert.Throws<OptionsValidationException>(() => AccessPolicy.Of(options)).Message;
        Assert.Contains("Access:Publishable:0:" + fault, message, StringComparison.Ordinal);
    }

    public void Dispose() => _service.Dispose();

    private async Task<HttpResponseMessage> SendAsync(string call, string? origin, string order)
    {
        using HttpRequestMessage request = new(HttpMethod.Post, new Uri($"/v1/{call}", UriKind.Relative))
        {
            Content = new StringContent(order, Encoding.UTF8, "application/json"),
        };
        request.Headers.Add(KeyHandler.Header, Key);
        if (origin is not null)
        {
            request.Headers.Add("Origin", origin);
        }

        return await _service.Http.SendAsync(request);
    }
}
