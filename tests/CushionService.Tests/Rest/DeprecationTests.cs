using System.Text.Json;
using CushionService.Deprecations;
using CushionService.Tests.Access;
using CushionService.Tests.Hosting;
using Grpc.Core;
using Microsoft.AspNetCore.Http;

namespace CushionService.Tests.Rest;

/// <summary>A call that the configuration deprecates says so through both doors, and until when it is answered (RFC 9745, RFC
/// 8594).</summary>
public sealed class DeprecationTests
{
    private const string Since = "@1803859200",
        Sunset = "Wed, 01 Mar 2028 00:00:00 GMT";

    [Fact]
    public void The_headers_name_both_days()
    {
        DefaultHttpContext http = new();
        new Deprecation(new DateOnly(2027, 3, 1), new DateOnly(2028, 3, 1)).Write(http.Response);
        Assert.Equal(Since, http.Response.Headers["Deprecation"].ToString());
        Assert.Equal(Sunset, http.Response.Headers["Sunset"].ToString());
        Assert.Contains("rel=\"deprecation\"", http.Response.Headers["Link"].ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_answer_of_a_deprecated_call_has_the_headers_and_the_document_marks_it()
    {
        using RunningService service = Deprecating(("Deprecated:estimateYardage:Since", "2027-03-01"));
        byte[] pillow = System.Text.Encoding.UTF8.GetBytes(Callers.Pillow);
        foreach (byte[] order in (byte[][])[pillow, "{}"u8.ToArray(), "{ no order"u8.ToArray()])
        {
            using HttpResponseMessage answer = await service.PostAsync("yardage", order);
            Assert.Equal(Since, answer.Headers.GetValues("Deprecation").Single());
            Assert.Equal(Sunset, answer.Headers.GetValues("Sunset").Single());
        }

        using HttpResponseMessage other = await service.PostAsync("validations", pillow);
        Assert.False(other.Headers.Contains("Deprecation"));
        Assert.False(other.Headers.Contains("Sunset"));

        using JsonDocument document = JsonDocument.Parse(await service.Http.GetStringAsync(new Uri("/openapi/v1.json", UriKind.Relative)));
        Assert.Equal(
            ["/v1/yardage"],
            document
                .RootElement.GetProperty("paths")
                .EnumerateObject()
                .Where(path => path.Value.EnumerateObject().Any(call => call.Value.TryGetProperty("deprecated", out _)))
                .Select(path => path.Name)
        );
    }

    [Fact]
    public async Task A_page_of_another_site_may_read_them()
    {
        using RunningService service = Deprecating(
            ("Deprecated:estimateYardage:Since", "2027-03-01"),
            ("Access:Origins:0", "https://shop.example")
        );
        using HttpRequestMessage request = new(HttpMethod.Post, new Uri("/v1/yardage", UriKind.Relative))
        {
            Content = new StringContent(Callers.Pillow, System.Text.Encoding.UTF8, "application/json"),
        };
        request.Headers.Add("Origin", "https://shop.example");
        using HttpResponseMessage answer = await service.Http.SendAsync(request);
        string exposed = string.Join(',', answer.Headers.GetValues("Access-Control-Expose-Headers"));
        Assert.All(["Deprecation", "Sunset", "Link"], name => Assert.Contains(name, exposed, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Over_gRPC_they_are_metadata()
    {
        using RunningService service = Deprecating(("Deprecated:estimateYardage:Since", "2027-03-01"));
        using AsyncUnaryCall<CushionService.Grpc.V1.EstimateYardageResponse> old = service.Calls.EstimateYardageAsync(
            new() { Order = Callers.PillowMessage }
        );
        Metadata headers = await old.ResponseHeadersAsync;
        Assert.Equal(Since, headers.GetValue("deprecation"));
        Assert.Equal(Sunset, headers.GetValue("sunset"));
        using AsyncUnaryCall<CushionService.Grpc.V1.ValidateResponse> other = service.Calls.ValidateAsync(
            new() { Order = Callers.PillowMessage }
        );
        Assert.Null((await other.ResponseHeadersAsync).GetValue("deprecation"));
    }

    [Theory]
    [InlineData("Deprecated:estimateYardage:Since", "soon", "is a day")]
    [InlineData("Deprecated:estimateYardage:Since", "2027-03-02", "a year after")]
    [InlineData("Deprecated:estimateYardage:Until", "2028-03-01", "estimateYardage:Since is a day")]
    public void A_configuration_that_breaks_the_promise_stops_the_start(string key, string value, string told)
    {
        InvalidDataException wrong = Assert.Throws<InvalidDataException>(() => Deprecating((key, value)).Dispose());
        Assert.Contains(told, wrong.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_call_that_there_is_not_stops_the_start()
    {
        (string, string)[] settings = [("Deprecated:guess:Since", "2027-03-01"), ("Deprecated:guess:Sunset", "2028-03-01")];
        InvalidDataException wrong = Assert.Throws<InvalidDataException>(() => new RunningService(_ => { }, settings: settings).Dispose());
        Assert.Contains("Deprecated:guess is no call", wrong.Message, StringComparison.Ordinal);
    }

    private static RunningService Deprecating(params (string, string)[] settings) =>
        new(_ => { }, settings: [("Deprecated:estimateYardage:Sunset", "2028-03-01"), .. settings]);
}
