using System.Buffers;
using CushionService.Grpc;
using Grpc.Core;

namespace CushionService.Tests.Grpc;

/// <summary>What becomes of a call whose message cannot be read.</summary>
public sealed class UnreadTests
{
    [Fact]
    public void Want_of_memory_for_a_message_is_told_as_a_call_to_make_again()
    {
        Readers readers = new();
        OrderBinding.Bind(readers, null);

        Assert.NotEmpty(readers.All);
        Assert.All(
            readers.All,
            read => Assert.Equal(StatusCode.Unavailable, Assert.Throws<RpcException>(() => read(new NoMemory())).StatusCode)
        );
    }

    // What reads the message of each call.
    private sealed class Readers : ServiceBinderBase
    {
        public List<Func<DeserializationContext, object>> All { get; } = [];

        public override void AddMethod<TRequest, TResponse>(
            Method<TRequest, TResponse> method,
            UnaryServerMethod<TRequest, TResponse>? handler
        ) => All.Add(method.RequestMarshaller.ContextualDeserializer);

        public override void AddMethod<TRequest, TResponse>(
            Method<TRequest, TResponse> method,
            DuplexStreamingServerMethod<TRequest, TResponse>? handler
        ) => All.Add(method.RequestMarshaller.ContextualDeserializer);
    }

    private sealed class NoMemory : DeserializationContext
    {
        public override int PayloadLength => 1;

        public override byte[] PayloadAsNewBuffer() => throw new InsufficientMemoryException();

        public override ReadOnlySequence<byte> PayloadAsReadOnlySequence() => throw new InsufficientMemoryException();
    }
}
