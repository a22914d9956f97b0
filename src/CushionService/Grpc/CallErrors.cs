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
/// <param name="retry">When a call that had no memory may be made again.</param>
internal sealed class CallErrors(ILogger<CallErrors> log, RetryDelay retry)
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

        log.CallFailed(exception, context.Method, Problems.TraceOf(context.GetHttpContext()));
        if (exception is OutOfMemoryException)
        {
            // There may be room again as soon as other answers are sent.
            return TryAgain(StatusCode.Unavailable, CallTexts.NoMemory, retry.NextSeconds(), context);
        }

        Google.Rpc.Status status = new()
        {
            Code = (int)Statuses.Of("internal").Grpc,
            Message = Text(CallTexts.Failed, context),
            Details = { Any.Pack(new ErrorInfo { Reason = "internal", Domain = "cushionservice" }), Any.Pack(Trace(context)) },
        };
        return status.ToRpcException();
    }

    /// <summary>The exception that rejects a call which may be made again.</summary>
    /// <param name="code">The status.</param>
    /// <param name="why">Why, for people.</param>
    /// <param name="seconds">When the caller may try again.</param>
    /// <param name="context">The call.</param>
    public static RpcException TryAgain(StatusCode code, Message why, int seconds, ServerCallContext context)
    {
        Google.Rpc.Status status = new()
        {
            Code = (int)code,
            Message = Text(why, context),
            Details = { Any.Pack(new RetryInfo { RetryDelay = Duration.FromTimeSpan(TimeSpan.FromSeconds(seconds)) }) },
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
