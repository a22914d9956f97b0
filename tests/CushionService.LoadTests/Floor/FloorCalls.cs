using CushionService.Grpc.V1;
using Google.Protobuf;
using Grpc.Core;

namespace CushionService.LoadTests.Floor;

/// <summary>The floor for gRPC: reads an order and echoes it.</summary>
[BindServiceMethod(typeof(FloorCalls), nameof(Bind))]
public class FloorCalls
{
    /// <summary>The service's name.</summary>
    public const string Service = "floor.Floor";

    private static readonly Marshaller<EstimateYardageRequest> Messages = Marshallers.Create(
        message => message.ToByteArray(),
        EstimateYardageRequest.Parser.ParseFrom
    );

    private static readonly Method<EstimateYardageRequest, EstimateYardageRequest> Echoing = new(
        MethodType.Unary,
        Service,
        nameof(Echo),
        Messages,
        Messages
    );

    /// <summary>Tells the server of the call.</summary>
    public static void Bind(ServiceBinderBase binder, FloorCalls? calls) =>
        binder.AddMethod(Echoing, calls is null ? null : new UnaryServerMethod<EstimateYardageRequest, EstimateYardageRequest>(calls.Echo));

    /// <summary>The call.</summary>
    public virtual Task<EstimateYardageRequest> Echo(EstimateYardageRequest request, ServerCallContext context) => Task.FromResult(request);
}
