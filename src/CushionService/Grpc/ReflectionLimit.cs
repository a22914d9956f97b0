using CushionService.Access;
using CushionService.Admission;
using CushionService.Rejections;
using Grpc.Core;
using Grpc.Core.Interceptors;

namespace CushionService.Grpc;

/// <summary>Counts every message of a stream of reflection like a request for a page: a stream has no end, and each message is answered
/// with a description of kilobytes.</summary>
/// <param name="limits">The limits by address.</param>
/// <param name="retry">When an address may ask again.</param>
internal sealed class ReflectionLimit(RateLimits limits, RetryDelay retry) : Interceptor
{
    /// <summary>Passes a stream on, and ends it with RESOURCE_EXHAUSTED at the first message beyond the limit.</summary>
    public override Task DuplexStreamingServerHandler<TRequest, TResponse>(
        IAsyncStreamReader<TRequest> requestStream,
        IServerStreamWriter<TResponse> responseStream,
        ServerCallContext context,
        DuplexStreamingServerMethod<TRequest, TResponse> continuation
    ) => continuation(new Counted<TRequest>(this, requestStream, context), responseStream, context);

    private void Count(ServerCallContext context)
    {
        if (!limits.TakePage(CallerAddress.Of(context.GetHttpContext())))
        {
            throw CallErrors.TryAgain(StatusCode.ResourceExhausted, LimitTexts.AddressRate, retry.NextSeconds(), context);
        }
    }

    private sealed class Counted<T>(ReflectionLimit limit, IAsyncStreamReader<T> inner, ServerCallContext context) : IAsyncStreamReader<T>
    {
        private bool _begun;

        public T Current => inner.Current;

        // The first message came with the call, which was counted before it began.
        public async Task<bool> MoveNext(CancellationToken cancellationToken)
        {
            if (!await inner.MoveNext(cancellationToken))
            {
                return false;
            }

            if (_begun)
            {
                limit.Count(context);
            }

            _begun = true;
            return true;
        }
    }
}
