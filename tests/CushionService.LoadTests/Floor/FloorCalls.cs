using CushionService.Grpc.V1;
using Google.Protobuf;
using Grpc.Core;

namespace CushionService.LoadTests.Floor;

/// <summary>The floor for gRPC: reads an order and echoes it.</summary>
[BindServiceMethod(typeof(FloorCalls), nameof(Bind))]
public sealed class FloorCalls
{
    /// <summary>The service's name.</summary>
    public const string Service = "floor.Floor";

    private static readonly Marshaller<EstimateYardageRequest> Messages = Marshallers.Create(message => message.ToByteArray(), EstimateYardageRequest.Parser.ParseFrom);

    /// <summary>The call.</summary>
    public static Method<EstimateYardageRequest, EstimateYardageRequest> Echo { get; } = new(MethodType.Unary, Service, "Echo", Messages, Messages);

    /// <summary>Tells the server of the call.</summary>
    public static void Bind(ServiceBinderBase binder, FloorCalls? calls) =>
        binder.AddMethod(Echo, calls is null ? null : (request, _) => Task.FromResult(request));
}
