using System.Diagnostics;
using CushionService.Contract;
using Google.Protobuf.WellKnownTypes;
using Google.Rpc;
using Grpc.Core;

namespace CushionService.Grpc;

/// <summary>Turns what a caller did not cause into a status that says a code and the trace, and nothing else.</summary>
internal sealed class Faults(ILogger<Faults> log)
{
    /// <summary>What a caller is told of an exception that is no status yet.</summary>
    public RpcException Told(Exception fault, ServerCallContext context)
    {
        if (fault is OperationCanceledException && context.CancellationToken.IsCancellationRequested)
        {
            return new RpcException(new global::Grpc.Core.Status(StatusCode.Cancelled, "The call was given up."));
        }

        log.Failed(fault, context.Method);
        Google.Rpc.Status status = new()
        {
            Code = (int)Statuses.Of("internal").Grpc,
            Message = "The service failed; the fault is not the order's.",
            Details = { Any.Pack(new ErrorInfo { Reason = "internal", Domain = "cushionservice" }), Any.Pack(Trace(context)) },
        };
        return status.ToRpcException();
    }

    /// <summary>Names the call in the service's logs.</summary>
    public static RequestInfo Trace(ServerCallContext context) =>
        new() { RequestId = Activity.Current?.Id ?? context.GetHttpContext().TraceIdentifier };
}
