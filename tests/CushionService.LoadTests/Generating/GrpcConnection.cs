using Grpc.Core;
using Grpc.Net.Client;

namespace CushionService.LoadTests.Generating;

/// <summary>A connection that sends prepared messages to one gRPC call.</summary>
internal sealed class GrpcConnection : IConnection
{
    private static readonly Marshaller<byte[]> Bytes = Marshallers.Create(bytes => bytes, bytes => bytes);

    private readonly CallInvoker _invoker;
    private readonly Method<byte[], byte[]> _method;
    private readonly GrpcChannel? _own;

    /// <summary>One of several that share a connection of HTTP/2.</summary>
    /// <param name="channel">The connection.</param>
    /// <param name="path">The call: service and method.</param>
    public GrpcConnection(GrpcChannel channel, string path)
    {
        _invoker = channel.CreateCallInvoker();
        _method = new Method<byte[], byte[]>(MethodType.Unary, path.Split('/')[0], path.Split('/')[1], Bytes, Bytes);
    }

    /// <summary>One with a connection of HTTP/2 of its own, as each caller has.</summary>
    /// <param name="at">Where the service hears.</param>
    /// <param name="path">The call: service and method.</param>
    public GrpcConnection(Uri at, string path)
        : this(GrpcChannel.ForAddress(at), path, owned: true) { }

    private GrpcConnection(GrpcChannel channel, string path, bool owned)
        : this(channel, path) => _own = owned ? channel : null;

    public async ValueTask<Reply> SendAsync(byte[] request, CancellationToken cancellation)
    {
        using AsyncUnaryCall<byte[]> call = _invoker.AsyncUnaryCall(
            _method,
            null,
            new CallOptions(cancellationToken: cancellation),
            request
        );
        try
        {
            await call;
            return new Reply(200, false);
        }
        catch (RpcException refused)
        {
            return Of(refused);
        }
    }

    /// <summary>The HTTP status that a status of gRPC maps to.</summary>
    public static Reply Of(RpcException refused) =>
        new(
            refused.StatusCode switch
            {
                StatusCode.InvalidArgument => 422,
                StatusCode.PermissionDenied => 403,
                StatusCode.ResourceExhausted => 429,
                StatusCode.Unavailable or StatusCode.DeadlineExceeded => 503,
                _ => 500,
            },
            refused.Trailers.Get("grpc-status-details-bin") is not null
        );

    public void Dispose() => _own?.Dispose();
}
