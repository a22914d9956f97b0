using System.Text.Json.Nodes;
using CushionService.Grpc.V1;
using CushionService.Tests.Hosting;
using Google.Protobuf;
using Google.Rpc;
using Grpc.Core;

namespace CushionService.Tests.BothDoors;

/// <summary>Calls by gRPC what the contract names by a path.</summary>
internal static class SecondDoor
{
    // Generous: the tests also run on machines much slower than a server.
    private const int Seconds = 120;

    /// <summary>The answer, or the violations, in the form of <see cref="Wire.Plain"/>.</summary>
    /// <param name="service">The service.</param>
    /// <param name="call">The last part of the path.</param>
    /// <param name="json">The order, as JSON has it.</param>
    /// <param name="language">The reader's language.</param>
    public static async Task<(StatusCode Status, JsonObject Answer)> CallAsync(
        RunningService service,
        string call,
        JsonObject json,
        string language
    )
    {
        var order = (Order)Wire.Message(json, Order.Descriptor);
        Metadata headers = new() { { "accept-language", language } };
        DateTime deadline = DateTime.UtcNow.AddSeconds(Seconds);
        try
        {
            IMessage answer = call switch
            {
                "validations" => await service.Calls.ValidateAsync(new() { Order = order }, headers, deadline),
                "pieces" => await service.Calls.ListPiecesAsync(new() { Order = order }, headers, deadline),
                "layouts" => await service.Calls.LayOutAsync(new() { Order = order }, headers, deadline),
                "yardage" => await service.Calls.EstimateYardageAsync(new() { Order = order }, headers, deadline),
                "fits" => await service.Calls.FitAsync(new() { Order = order }, headers, deadline),
                _ => await service.Calls.QuoteAsync(new() { Order = order }, headers, deadline),
            };
            return (StatusCode.OK, Wire.Json(answer));
        }
        catch (RpcException refused)
        {
            Google.Rpc.Status status = refused.GetRpcStatus()!;
            ViolationList list = status.GetDetail<ViolationList>();
            Assert.Equal(
                list.Violations.Select(violation => (violation.Pointer, violation.Code, violation.Detail)),
                status.GetDetail<BadRequest>().FieldViolations.Select(field => (field.Field, field.Reason, field.Description))
            );
            return (refused.StatusCode, Wire.Json(list));
        }
    }
}
