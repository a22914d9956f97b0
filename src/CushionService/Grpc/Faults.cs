using System.Diagnostics;
using Google.Protobuf.WellKnownTypes;
using Google.Rpc;
using Grpc.Core;
using Grpc.Core.Interceptors;

namespace CushionService.Grpc;

/// <summary>Turns what a caller did not cause into a status that says a code and the trace, and nothing else.</summary>
internal sealed class Faults(ILogger<Faults> log) : Interceptor
{
    public override async Task<TResponse> UnaryServerHandler<TRequest, TResponse>(
        TRequest request, ServerCallContext context, UnaryServerMethod<TRequest, TResponse> continuation)
    {
        TResponse? response = null;
        await TellAsync(async () => response = await continuation(request, context), context);
        return response!;
    }

    public override Task DuplexStreamingServerHandler<TRequest, TResponse>(
        IAsyncStreamReader<TRequest> requests, IServerStreamWriter<TResponse> responses, ServerCallContext context, DuplexStreamingServerMethod<TRequest, TResponse> continuation) =>
        TellAsync(() => continuation(requests, responses, context), context);

    private async Task TellAsync(Func<Task> call, ServerCallContext context)
    {
        try
        {
            await call();
        }
        catch (OperationCanceledException) when (context.CancellationToken.IsCancellationRequested)
        {
            throw new RpcException(new global::Grpc.Core.Status(StatusCode.Cancelled, "The call was given up."));
        }
        catch (Exception fault) when (fault is not RpcException)
        {
            log.Failed(fault, context.Method);
            Google.Rpc.Status status = new()
            {
                Code = (int)Statuses.Of("internal").Grpc,
                Message = "The service failed; the fault is not the order's.",
                Details = { Any.Pack(new ErrorInfo { Reason = "internal", Domain = "cushionservice" }), Any.Pack(Trace(context)) },
            };
            throw status.ToRpcException();
        }
    }

    /// <summary>Names the call in the service's logs.</summary>
    public static RequestInfo Trace(ServerCallContext context) =>
        new() { RequestId = Activity.Current?.Id ?? context.GetHttpContext().TraceIdentifier };
}
