using CushionService.Contract;
using CushionService.Rejections;
using Google.Protobuf.WellKnownTypes;
using Google.Rpc;
using Grpc.Core;

namespace CushionService.Grpc;

/// <summary>Turns exceptions that the caller did not cause into a status that has a code and the trace, and nothing of
/// the inside.</summary>
internal sealed class CallErrors(ILogger<CallErrors> log)
{
    /// <summary>The status for an exception that has none yet: CANCELLED when the caller cancelled, else INTERNAL,
    /// which is logged.</summary>
    /// <param name="exception">What the call has thrown.</param>
    /// <param name="context">The call.</param>
    public RpcException StatusOf(Exception exception, ServerCallContext context)
    {
        if (exception is OperationCanceledException && context.CancellationToken.IsCancellationRequested)
        {
            return new RpcException(new global::Grpc.Core.Status(StatusCode.Cancelled, "The call was cancelled."));
        }

        if (exception is OutOfMemoryException)
        {
            // There may be room again as soon as other answers are sent.
            return new RpcException(new global::Grpc.Core.Status(StatusCode.Unavailable, "There is no memory left for this answer now."));
        }

        log.CallFailed(exception, context.Method, Problems.TraceOf(context.GetHttpContext()));
        Google.Rpc.Status status = new()
        {
            Code = (int)Statuses.Of("internal").Grpc,
            Message = "The service failed; the fault is not the order's.",
            Details = { Any.Pack(new ErrorInfo { Reason = "internal", Domain = "cushionservice" }), Any.Pack(Trace(context)) },
        };
        return status.ToRpcException();
    }

    /// <summary>Names the call in the service's logs, as a problem does over REST.</summary>
    public static RequestInfo Trace(ServerCallContext context) => new() { RequestId = Problems.TraceOf(context.GetHttpContext()) };
}
