using CushionService.Contract;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Languages;
using CushionService.Rejections;
using Google.Protobuf.WellKnownTypes;
using Google.Rpc;
using Grpc.Core;

namespace CushionService.Grpc;

/// <summary>Turns exceptions that the caller did not cause into a status that has a code and the trace, and nothing of
/// the inside.</summary>
/// <param name="log">Gets what the caller does not: the exception, with the method and the trace.</param>
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
            return new RpcException(new global::Grpc.Core.Status(StatusCode.Cancelled, Text(CallTexts.Cancelled, context)));
        }

        if (exception is OutOfMemoryException)
        {
            // There may be room again as soon as other answers are sent.
            return new RpcException(new global::Grpc.Core.Status(StatusCode.Unavailable, Text(CallTexts.NoMemory, context)));
        }

        log.CallFailed(exception, context.Method, Problems.TraceOf(context.GetHttpContext()));
        Google.Rpc.Status status = new()
        {
            Code = (int)Statuses.Of("internal").Grpc,
            Message = Text(CallTexts.Failed, context),
            Details = { Any.Pack(new ErrorInfo { Reason = "internal", Domain = "cushionservice" }), Any.Pack(Trace(context)) },
        };
        return status.ToRpcException();
    }

    /// <summary>A message in the language of who reads it.</summary>
    /// <param name="message">One without lengths, since the order and its unit may not be known.</param>
    /// <param name="context">The call.</param>
    public static string Text(Message message, ServerCallContext context) => Writer(context, LengthUnit.Inch).Text(message);

    /// <summary>Writes messages in the language of who reads the answer.</summary>
    /// <param name="context">The call.</param>
    /// <param name="unit">The unit of lengths.</param>
    public static MessageWriter Writer(ServerCallContext context, LengthUnit unit) =>
        new(ReaderLanguage.Of(context.GetHttpContext()), unit);

    /// <summary>Names the call in the service's logs, as a problem does over REST.</summary>
    /// <param name="context">The call.</param>
    public static RequestInfo Trace(ServerCallContext context) => new() { RequestId = Problems.TraceOf(context.GetHttpContext()) };
}
