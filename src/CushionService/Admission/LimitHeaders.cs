using CushionService.Access;

namespace CushionService.Admission;

/// <summary>Tells a caller which limits hold for it, and what is left of the one that its call was measured by
/// (draft-ietf-httpapi-ratelimit-headers-10).</summary>
internal static class LimitHeaders
{
    private const string Policy = "RateLimit-Policy",
        Left = "RateLimit";

    /// <summary>What is left of the calls.</summary>
    /// <param name="response">Gets the headers.</param>
    /// <param name="grant">The caller's.</param>
    /// <param name="left">Calls that it may make at once.</param>
    public static void Calls(HttpResponse response, Grant grant, long left)
    {
        response.Headers[Policy] = CallsOf(grant);
        // The window says in how many seconds the whole burst is available again: what is used, over the rate, rounded up.
        response.Headers[Left] = $"\"burst\";r={left};t={(grant.Burst - left + grant.Rate - 1) / grant.Rate}";
    }

    /// <summary>That more work has been done than the grant covers.</summary>
    /// <param name="response">Gets the headers.</param>
    /// <param name="grant">The caller's.</param>
    /// <param name="seconds">Until that is paid.</param>
    public static void NoSteps(HttpResponse response, Grant grant, int seconds)
    {
        response.Headers[Policy] = $"{CallsOf(grant)}, \"steps\";q={grant.Steps};qu=\"million-steps\";w=1";
        response.Headers[Left] = $"\"steps\";r=0;t={seconds}";
    }

    /// <summary>That no more streams may be open; nobody knows until when.</summary>
    /// <param name="response">Gets the headers.</param>
    /// <param name="grant">The caller's.</param>
    public static void NoStreams(HttpResponse response, Grant grant)
    {
        response.Headers[Policy] = $"{CallsOf(grant)}, \"streams\";q={grant.Streams};qu=\"concurrent-requests\"";
        response.Headers[Left] = "\"streams\";r=0";
    }

    /// <summary>That an address has asked for too many pages.</summary>
    /// <param name="response">Gets the headers.</param>
    /// <param name="options">The limits of pages.</param>
    public static void NoPages(HttpResponse response, AdmissionOptions options)
    {
        response.Headers[Policy] = $"\"pages\";q={options.PageRate};w=1, \"page-burst\";q={options.PageBurst}";
        response.Headers[Left] = $"\"page-burst\";r=0;t={(options.PageBurst + options.PageRate - 1) / options.PageRate}";
    }

    private static string CallsOf(Grant grant) => $"\"calls\";q={grant.Rate};w=1, \"burst\";q={grant.Burst}";
}
