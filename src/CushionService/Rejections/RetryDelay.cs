using Microsoft.Extensions.Options;

namespace CushionService.Rejections;

/// <summary>When a rejected caller may try again: the same least time for all, and a few seconds more or less at
/// random, so that callers that were rejected together do not come back together.</summary>
/// <param name="options">The least time, and the jitter.</param>
/// <param name="random">Where the jitter comes from; tests give one that they know.</param>
internal sealed class RetryDelay(IOptions<RetryOptions> options, Random random)
{
    /// <summary>The delay for the next rejection, in whole seconds: from
    /// <see cref="RetryOptions.RetryAfterSeconds"/> to as much more as
    /// <see cref="RetryOptions.RetryJitterSeconds"/> says.</summary>
    /// <param name="atLeast">Seconds before which trying again is of no use, whatever is configured.</param>
    public int NextSeconds(int atLeast = 0) =>
        Math.Max(atLeast, options.Value.RetryAfterSeconds) + random.Next(options.Value.RetryJitterSeconds + 1);
}
