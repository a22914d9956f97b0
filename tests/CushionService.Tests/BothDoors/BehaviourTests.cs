using System.Net;
using System.Text.Json.Nodes;
using CushionService.Grpc.V1;
using CushionService.Tests.Hosting;
using CushionService.Tests.Orders;
using Grpc.Core;

namespace CushionService.Tests.BothDoors;

/// <summary>The same order gets the same answer in the same language, or the same refusal, through either door.</summary>
public sealed class BehaviourTests(RunningService service) : IClassFixture<RunningService>
{
    private const int Count = 200;

    private static readonly string[] Languages = ["en", "de", "fr", "es"];

    [Theory]
    [InlineData("validations")]
    [InlineData("pieces")]
    [InlineData("layouts")]
    [InlineData("yardage")]
    [InlineData("quotes")]
    public async Task Generated_orders_are_answered_alike(string call)
    {
        int answered = 0;
        for (int number = 0; number < Count; number++)
        {
            JsonObject order = number % 2 == 0 ? OrderGenerator.Sound(number) : OrderGenerator.Careless(number);
            string language = Languages[number / 2 % Languages.Length];
            using HttpResponseMessage response = await service.PostInAsync(call, order.ToJsonString(), language);
            JsonObject rest = await response.JsonAsync();
            (StatusCode status, JsonObject grpc) = await SecondDoor.CallAsync(service, call, order, language);

            Assert.Equal(response.StatusCode == HttpStatusCode.OK ? StatusCode.OK : StatusCode.InvalidArgument, status);
            JsonNode? expected =
                status == StatusCode.OK ? Wire.Plain(rest) : new JsonObject { ["violations"] = Wire.Plain(rest["violations"]) };
            Assert.True(JsonNode.DeepEquals(expected, grpc), $"{order}\nREST: {expected}\ngRPC: {grpc}");
            answered += status == StatusCode.OK ? 1 : 0;
        }

        Assert.True(answered > Count / 2, $"Only {answered} of {Count} orders were answered.");
        Assert.True(call == "validations" || answered < Count, "No order was refused.");
    }

    [Fact]
    public async Task The_catalogue_is_the_same()
    {
        JsonNode rest = JsonNode.Parse(await service.Http.GetStringAsync("/v1/catalogue"))!;
        GetCatalogueResponse grpc = await service.Calls.GetCatalogueAsync(new());

        Assert.True(JsonNode.DeepEquals(Wire.Plain(rest), Wire.Json(grpc)), $"REST: {rest}\ngRPC: {grpc}");
        Assert.NotEmpty(grpc.Constructions);
    }
}
