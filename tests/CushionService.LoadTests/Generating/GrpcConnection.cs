using Grpc.Core;
using Grpc.Net.Client;

namespace CushionService.LoadTests.Generating;

/// <summary>A connection that sends prepared messages to one gRPC call.</summary>
/// <param name="channel">The channel, shared by the connections.</param>
/// <param name="path">The call: service and method.</param>
internal sealed class GrpcConnection(GrpcChannel channel, string path) : IConnection
{
    private static readonly Marshaller<byte[]> Bytes = Marshallers.Create(bytes => bytes, bytes => bytes);

    private readonly CallInvoker _invoker = channel.CreateCallInvoker();
    private readonly Method<byte[], byte[]> _method = new(MethodType.Unary, path.Split('/')[0], path.Split('/')[1], Bytes, Bytes);

    public async ValueTask<Reply> SendAsync(byte[] request, CancellationToken cancellation)
    {
        using AsyncUnaryCall<byte[]> call = _invoker.AsyncUnaryCall(_method, null, new CallOptions(cancellationToken: cancellation), request);
        try
        {
            await call;
            return new Reply(200, false);
        }
        catch (RpcException refused)
        {
            return new Reply(
                refused.StatusCode switch
                {
                    StatusCode.InvalidArgument => 422,
                    StatusCode.PermissionDenied => 403,
                    StatusCode.ResourceExhausted => 429,
                    StatusCode.Unavailable or StatusCode.DeadlineExceeded => 503,
                    _ => 500,
                },
                refused.Trailers.Get("grpc-status-details-bin") is not null);
        }
    }

    public void Dispose()
    {
    }
}
