using Grpc.Core;

namespace CushionService.Grpc;

/// <summary>Binds the calls so that bytes which are no message are reported as the caller's error, INVALID_ARGUMENT, and
/// want of memory for them as UNAVAILABLE. Without it the framework reports and logs both as a failure of the service.</summary>
internal static class OrderBinding
{
    /// <summary>Adds the calls to the server. The framework finds this method by the attribute on
    /// <see cref="OrderCalls"/>.</summary>
    /// <param name="binder">Gets every method.</param>
    /// <param name="calls">The calls; null when the framework only asks for their names.</param>
    public static void Bind(ServiceBinderBase binder, V1.CushionService.CushionServiceBase? calls) =>
        V1.CushionService.BindService(new CheckedBinder(binder), calls);

    // Passes every method on with a marshaller that checks. The service has two shapes of methods: unary, and streams
    // both ways.
    private sealed class CheckedBinder(ServiceBinderBase binder) : ServiceBinderBase
    {
        public override void AddMethod<TRequest, TResponse>(
            Method<TRequest, TResponse> method,
            UnaryServerMethod<TRequest, TResponse>? handler
        ) => binder.AddMethod(Of(method), handler);

        public override void AddMethod<TRequest, TResponse>(
            Method<TRequest, TResponse> method,
            DuplexStreamingServerMethod<TRequest, TResponse>? handler
        ) => binder.AddMethod(Of(method), handler);

        // Only requests are checked: our own answers are messages.
        private static Method<TRequest, TResponse> Of<TRequest, TResponse>(Method<TRequest, TResponse> method)
            where TRequest : class
            where TResponse : class
        {
            Marshaller<TRequest> requests = Marshallers.Create(
                method.RequestMarshaller.ContextualSerializer,
                bytes => Read(method.RequestMarshaller, bytes)
            );
            return new Method<TRequest, TResponse>(method.Type, method.ServiceName, method.Name, requests, method.ResponseMarshaller);
        }

        private static T Read<T>(Marshaller<T> marshaller, DeserializationContext bytes)
        {
            try
            {
                return marshaller.ContextualDeserializer(bytes);
            }
            catch (Google.Protobuf.InvalidProtocolBufferException)
            {
                throw UnreadableMessages.Exception;
            }
            catch (OutOfMemoryException)
            {
                throw UnreadableMessages.NoMemory;
            }
        }
    }
}
