using System.Net;
using CushionService.Access;
using CushionService.Tests.Hosting;
using Grpc.Core;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;
using V1 = CushionService.Grpc.V1;

namespace CushionService.Tests.Access;

/// <summary>A caller may do what its scopes say, and nothing else, through either door.</summary>
public sealed class ScopeTests(ScopeTests.Guarded guarded) : IClassFixture<ScopeTests.Guarded>
{
    private static readonly string EstimateKey = Callers.NewKey(),
        QuoteKey = Callers.NewKey(),
        BatchKey = Callers.NewKey(),
        EndedKey = Callers.NewKey();

    private readonly RunningService _service = guarded.Service;

    public static TheoryData<string, string?, HttpStatusCode> Calls =>
        new()
        {
            // Once a key is configured, a caller without one may do what a page needs.
            { "validations", null, HttpStatusCode.OK },
            { "yardage", null, HttpStatusCode.OK },
            { "pieces", null, HttpStatusCode.Unauthorized },
            { "layouts", null, HttpStatusCode.Unauthorized },
            { "quotes", null, HttpStatusCode.Unauthorized },
            { "quotes/stream", null, HttpStatusCode.Unauthorized },
            { "comparisons", null, HttpStatusCode.Unauthorized },
            { "fits", null, HttpStatusCode.Unauthorized },
            { "yardage", EstimateKey, HttpStatusCode.OK },
            { "quotes", EstimateKey, HttpStatusCode.Forbidden },
            { "quotes/stream", EstimateKey, HttpStatusCode.Forbidden },
            { "quotes", QuoteKey, HttpStatusCode.OK },
            { "pieces", QuoteKey, HttpStatusCode.OK },
            { "layouts", QuoteKey, HttpStatusCode.OK },
            { "quotes/stream", QuoteKey, HttpStatusCode.Forbidden },
            { "quotes/stream", BatchKey, HttpStatusCode.OK },
            { "quotes", BatchKey, HttpStatusCode.Forbidden },
            { "yardage", EndedKey, HttpStatusCode.Unauthorized },
            { "yardage", "a key that nobody gave out", HttpStatusCode.Unauthorized },
        };

    [Theory]
    [MemberData(nameof(Calls))]
    public async Task A_call_is_let_in_by_its_scope(string call, string? key, HttpStatusCode expected)
    {
        using HttpResponseMessage response = await _service.SendAsync(call, key, Callers.Pillow.ReplaceLineEndings("") + "\n");

        Assert.Equal(expected, response.StatusCode);
        if (expected != HttpStatusCode.OK)
        {
            await response.ProblemAsync();
        }
    }

    [Fact]
    public async Task The_other_door_is_guarded_alike()
    {
        V1.Order order = Callers.PillowMessage;
        (string? Key, StatusCode Estimate, StatusCode Quote)[] expected =
        [
            (null, StatusCode.OK, StatusCode.Unauthenticated),
            (EstimateKey, StatusCode.OK, StatusCode.PermissionDenied),
            (QuoteKey, StatusCode.OK, StatusCode.OK),
            (EndedKey, StatusCode.Unauthenticated, StatusCode.Unauthenticated),
            ("a key that nobody gave out", StatusCode.Unauthenticated, StatusCode.Unauthenticated),
        ];
        foreach ((string? key, StatusCode estimate, StatusCode quote) in expected)
        {
            Assert.Equal(
                estimate,
                (await Callers.StatusAsync(_service.Calls.EstimateYardageAsync(new() { Order = order }, Callers.Headers(key)))).Code
            );
            Assert.Equal(quote, (await Callers.StatusAsync(_service.Calls.QuoteAsync(new() { Order = order }, Callers.Headers(key)))).Code);
        }
    }

    [Theory]
    [InlineData("\"effort\":\"quick\"", "\"effort\":\"thorough\"", "/effort")]
    [InlineData("\"id\":\"pillow\"", "\"id\":\"pillow\",\"quantity\":11", "")]
    [InlineData("\"id\":\"linen\"", "\"id\":\"linen\",\"price\":{\"amount\":\"1.00\",\"per\":\"yd\"}", "/fabrics/0/price")]
    [InlineData("\"units\":\"in\"", "\"units\":\"in\",\"prices\":[{\"item\":\"thread\",\"amount\":\"0.02\",\"per\":\"yd\"}]", "/prices")]
    [InlineData("\"units\":\"in\"", "\"units\":\"in\",\"costing\":{\"markup\":0.5}", "/costing")]
    public async Task An_order_that_asks_for_more_than_its_caller_may_is_refused(string part, string changed, string pointer)
    {
        string order = Callers
            .Pillow.Replace(part, changed, StringComparison.Ordinal)
            .Replace("\"units\":\"in\"", "\"units\":\"in\",\"currency\":\"USD\"", StringComparison.Ordinal);
        using HttpResponseMessage little = await _service.SendAsync("yardage", EstimateKey, order);
        using HttpResponseMessage much = await _service.SendAsync("yardage", QuoteKey, order);

        Assert.Equal(HttpStatusCode.Forbidden, little.StatusCode);
        Assert.Equal([$"{pointer} not-allowed"], (await little.ProblemAsync()).Violations());
        Assert.Equal(HttpStatusCode.OK, much.StatusCode);
    }

    [Fact]
    public async Task What_is_not_allowed_is_reported_beside_the_broken_rules()
    {
        string order = Callers
            .Pillow.Replace("\"id\":\"pillow\"", "\"id\":\"pillow\",\"quantity\":1001", StringComparison.Ordinal)
            .Replace("\"effort\":\"quick\"", "\"effort\":\"thorough\"", StringComparison.Ordinal);
        using HttpResponseMessage refused = await _service.SendAsync("yardage", EstimateKey, order);

        Assert.Equal(HttpStatusCode.Forbidden, refused.StatusCode);
        Assert.Equal(
            ["/effort not-allowed", " not-allowed", " too-many-pieces", "/cushions/0/quantity out-of-range"],
            (await refused.ProblemAsync()).Violations()
        );
    }

    [Fact]
    public async Task A_validation_answers_with_what_is_not_allowed()
    {
        string order = Callers.Pillow.Replace("\"id\":\"pillow\"", "\"id\":\"pillow\",\"quantity\":11", StringComparison.Ordinal);
        using HttpResponseMessage little = await _service.SendAsync("validations", EstimateKey, order);
        using HttpResponseMessage much = await _service.SendAsync("validations", QuoteKey, order);
        string found = await little.Content.ReadAsStringAsync();

        Assert.Equal(HttpStatusCode.OK, little.StatusCode);
        Assert.Contains("\"valid\":false", found, StringComparison.Ordinal);
        Assert.Contains("\"code\":\"not-allowed\"", found, StringComparison.Ordinal);
        Assert.Contains("\"valid\":true", await much.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_order_that_asks_for_too_much_is_refused_by_the_other_door_alike()
    {
        V1.Order order = Callers.PillowMessage;
        order.Effort = V1.Effort.Thorough;

        Assert.Equal(
            StatusCode.PermissionDenied,
            (await Callers.StatusAsync(_service.Calls.EstimateYardageAsync(new() { Order = order }, Callers.Headers(EstimateKey)))).Code
        );
    }

    [Fact]
    public async Task Overnight_is_for_the_orders_of_a_stream_whose_caller_has_a_key()
    {
        string order = Callers
            .Pillow.ReplaceLineEndings("")
            .Replace("\"effort\":\"quick\"", "\"effort\":\"overnight\"", StringComparison.Ordinal);
        using HttpResponseMessage alone = await _service.SendAsync("quotes", QuoteKey, order);
        using HttpResponseMessage streamed = await _service.SendAsync("quotes/stream", BatchKey, order + "\n");
        using RunningService open = new();
        using HttpResponseMessage unknown = await open.SendAsync("quotes/stream", null, order + "\n");

        Assert.Equal(HttpStatusCode.Forbidden, alone.StatusCode);
        Assert.Equal(["/effort not-allowed"], (await alone.ProblemAsync()).Violations());
        Assert.Contains("\"soldLength\"", await streamed.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Contains("not-allowed", await unknown.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_call_of_either_door_needs_a_scope()
    {
        RouteEndpoint[] calls =
        [
            .. _service
                .Services.GetRequiredService<EndpointDataSource>()
                .Endpoints.OfType<RouteEndpoint>()
                .Where(endpoint =>
                    endpoint.RoutePattern.RawText is { } route
                    && (
                        route.StartsWith("/v1/", StringComparison.Ordinal) || route.StartsWith("/cushionservice.", StringComparison.Ordinal)
                    )
                ),
        ];

        Assert.True(calls.Length >= 20, $"Only {calls.Length} calls were found.");
        Assert.All(
            calls,
            call =>
                Assert.True(
                    call.Metadata.GetMetadata<RequiresScopeAttribute>() is { Scope: not Scopes.None },
                    $"{call.DisplayName} needs no scope."
                )
        );
    }

    /// <summary>A service with a key of each kind.</summary>
    public sealed class Guarded : IDisposable
    {
        internal RunningService Service { get; } =
            new(
                _ => { },
                false,
                [
                    .. Callers.Settings(0, "page", EstimateKey, "estimate"),
                    .. Callers.Settings(1, "shop", QuoteKey, "estimate", "quote", "prices:inline"),
                    .. Callers.Settings(2, "night run", BatchKey, "batch"),
                    .. Callers.Settings(3, "former", EndedKey, "estimate"),
                    ("Access:Keys:3:NotAfter", "2020-01-01T00:00:00Z"),
                    ("Access:Keys:0:Pieces", "100"),
                ]
            );

        public void Dispose() => Service.Dispose();
    }
}
