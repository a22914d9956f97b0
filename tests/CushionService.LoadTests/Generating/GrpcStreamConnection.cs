using Grpc.Core;
using Grpc.Net.Client;

namespace CushionService.LoadTests.Generating;

/// <summary>Sends one prepared message to a bidirectional call of gRPC, and takes what is answered until its end.</summary>
/// <param name="channel">The connection.</param>
/// <param name="path">The call: service and method.</param>
internal sealed class GrpcStreamConnection(GrpcChannel channel, string path) : IConnection
{
    private static readonly Marshaller<byte[]> Bytes = Marshallers.Create(bytes => bytes, bytes => bytes);

    private readonly Method<byte[], byte[]> _method = new(MethodType.DuplexStreaming, path.Split('/')[0], path.Split('/')[1], Bytes, Bytes);

    public async ValueTask<Reply> SendAsync(byte[] request, CancellationToken cancellation)
    {
        using AsyncDuplexStreamingCall<byte[], byte[]> call = channel
            .CreateCallInvoker()
            .AsyncDuplexStreamingCall(_method, null, new CallOptions(cancellationToken: cancellation));
        try
        {
            await call.RequestStream.WriteAsync(request, cancellation);
            await call.RequestStream.CompleteAsync();
            while (await call.ResponseStream.MoveNext(cancellation))
            {
                // What the answer says is for the tests of the contract.
            }

            return new Reply(200, false);
        }
        catch (RpcException refused)
        {
            return GrpcConnection.Of(refused);
        }
    }

    public void Dispose()
    {
        // The connection is its owner's.
    }
}
