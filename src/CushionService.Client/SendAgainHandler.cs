using System.Net;

namespace CushionService.Client;

/// <summary>Sends a call again that the service could not take now: 429 and 503, after the time that <c>Retry-After</c> names, and calls
/// whose connection was lost. Every call may be sent again, since the service keeps nothing of one.</summary>
/// <param name="attempts">How often a call is sent at most.</param>
/// <param name="clock">Waits.</param>
public sealed class SendAgainHandler(int attempts, TimeProvider clock) : DelegatingHandler
{
    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(1);

    /// <inheritdoc />
    protected override async Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(request);
        for (int attempt = 1; ; attempt++)
        {
            TimeSpan pause = TimeSpan.FromMilliseconds(100 << Math.Min(attempt, 8));
            try
            {
                HttpResponseMessage response = await base.SendAsync(request, cancellationToken).ConfigureAwait(false);
                if (attempt >= attempts || response.StatusCode is not (HttpStatusCode.TooManyRequests or HttpStatusCode.ServiceUnavailable))
                {
                    return response;
                }

                pause = response.Headers.RetryAfter?.Delta ?? pause;
                response.Dispose();
            }
            catch (HttpRequestException) when (attempt < attempts) { }

            await Task.Delay(pause < Longest ? pause : Longest, clock, cancellationToken).ConfigureAwait(false);
        }
    }
}
