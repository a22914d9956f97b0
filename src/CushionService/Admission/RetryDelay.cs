using Microsoft.Extensions.Options;

namespace CushionService.Admission;

/// <summary>When a rejected caller may try again: the same least time for all, and a few seconds more or less at
/// random, so that callers that were rejected together do not come back together.</summary>
/// <param name="options">The least time, and the jitter.</param>
/// <param name="random">Where the jitter comes from; tests give one that they know.</param>
internal sealed class RetryDelay(IOptions<AdmissionOptions> options, Random random)
{
    /// <summary>The delay for the next rejection, in whole seconds: from
    /// <see cref="AdmissionOptions.RetryAfterSeconds"/> to as much more as
    /// <see cref="AdmissionOptions.RetryJitterSeconds"/> says.</summary>
    public int NextSeconds() => options.Value.RetryAfterSeconds + random.Next(options.Value.RetryJitterSeconds + 1);
}
