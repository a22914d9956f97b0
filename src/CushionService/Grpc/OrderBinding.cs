using Grpc.Core;

namespace CushionService.Grpc;

/// <summary>Binds the calls so that bytes which are no message are the caller's fault, and told as such: without it the framework takes
/// them for a failure of ours.</summary>
internal static class OrderBinding
{
    /// <summary>Tells the server of the calls.</summary>
    public static void Bind(ServiceBinderBase binder, V1.CushionService.CushionServiceBase? calls) =>
        V1.CushionService.BindService(new CheckedBinder(binder), calls);

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
                throw new RpcException(new global::Grpc.Core.Status(StatusCode.InvalidArgument, "The bytes are no message of this call."));
            }
        }
    }
}
