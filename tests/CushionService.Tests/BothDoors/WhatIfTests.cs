using System.Net;
using System.Text.Json.Nodes;
using CushionService.Grpc.V1;
using CushionService.Tests.Hosting;
using CushionService.Tests.Orders;
using Google.Protobuf;
using Grpc.Core;

namespace CushionService.Tests.BothDoors;

/// <summary>Comparisons and fits are answered, and refused through either door.</summary>
public sealed class WhatIfTests(RunningService service) : IClassFixture<RunningService>
{
    [Fact]
    public Task Comparisons_are_alike() =>
        SameAsync("comparisons", 24, WhatIfOrders.Compared, async order => await service.Calls.CompareAsync(new() { Order = order }));

    [Fact]
    public Task Fits_are_alike() =>
        SameAsync(
            "fits",
            6,
            number => WhatIfOrders.OnHand(number, 1),
            async order => await service.Calls.FitAsync(new() { Order = order })
        );

    [Theory]
    [InlineData("quotes")]
    [InlineData("validations")]
    [InlineData("fits")]
    public async Task Candidates_belong_to_a_comparison(string call) =>
        Assert.Contains("/candidates not-applicable", await FaultsAsync(call, WhatIfOrders.Compared(1)));

    [Theory]
    [InlineData("quotes")]
    [InlineData("validations")]
    [InlineData("comparisons")]
    public async Task Fabric_on_hand_belongs_to_a_fit(string call) =>
        Assert.Contains("/fabrics/0/onHand not-applicable", await FaultsAsync(call, WhatIfOrders.OnHand(1)));

    [Fact]
    public async Task What_a_call_needs_is_told()
    {
        JsonObject plain = OrderGenerator.Sound(1);
        Assert.Equal(["/candidates required"], await FaultsAsync("comparisons", plain));
        Assert.Equal(["/fabrics/0/onHand required"], await FaultsAsync("fits", plain));
    }

    [Fact]
    public async Task Faults_of_candidates_and_offcuts_are_told_with_their_places()
    {
        JsonObject compared = WhatIfOrders.Compared(1),
            onHand = WhatIfOrders.OnHand(1);
        compared["candidates"]![0]!["fabric"] = "silk";
        compared["candidates"]!.AsArray().Add(new JsonObject { ["fabric"] = "fabric-1" });
        onHand["fabrics"]![0]!["onHand"]![0]!["width"] = "2000 in";
        onHand["fabrics"]![0]!["onHand"]!.AsArray().Add(new JsonObject { ["width"] = 20, ["quantity"] = 0 });

        Assert.Equal(
            ["/candidates/0/fabric unknown-fabric", "/candidates/1/options required"],
            (await FaultsAsync("comparisons", compared)).Order()
        );
        string[] faults = await FaultsAsync("fits", onHand);
        Assert.Contains("/fabrics/0/onHand/0/width out-of-range", faults);
        Assert.Contains(faults, fault => fault.EndsWith("/length required", StringComparison.Ordinal));
        Assert.Contains(faults, fault => fault.EndsWith("/quantity out-of-range", StringComparison.Ordinal));
    }

    private async Task<string[]> FaultsAsync(string call, JsonObject order)
    {
        using HttpResponseMessage response = await service.PostAsync(call, order.ToJsonString());
        return (await response.JsonAsync()).Violations();
    }

    private async Task SameAsync(string call, int count, Func<int, JsonObject> orderOf, Func<Order, Task<IMessage>> ask)
    {
        int answered = 0;
        for (int number = 0; number < count; number++)
        {
            JsonObject order = JsonNode.Parse(orderOf(number).ToJsonString())!.AsObject();
            using HttpResponseMessage response = await service.PostAsync(call, order.ToJsonString());
            JsonObject rest = await response.JsonAsync();
            try
            {
                IMessage grpc = await ask((Order)Wire.Message(order, Order.Descriptor));
                Assert.Equal(HttpStatusCode.OK, response.StatusCode);
                Assert.True(JsonNode.DeepEquals(Wire.Plain(rest), Wire.Json(grpc)), $"{order}\nREST: {rest}\ngRPC: {grpc}");
                answered++;
            }
            catch (RpcException refused)
            {
                Assert.Equal((HttpStatusCode.UnprocessableEntity, StatusCode.InvalidArgument), (response.StatusCode, refused.StatusCode));
            }
        }

        Assert.True(answered > count / 2, $"Only {answered} of {count} orders were answered.");
    }
}
