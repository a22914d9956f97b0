using CushionService.Access;

namespace CushionService.Rest;

/// <summary>Who may keep an answer that is the same for every caller.</summary>
internal static class CacheScope
{
    /// <summary>The value of <c>Cache-Control</c>: any cache may keep what a caller without a key gets. What a key or a token
    /// has opened is for that caller alone, so that nobody gets it without one (RFC 9111, section 3.5).</summary>
    /// <param name="http">The call.</param>
    /// <param name="age">How long it may be kept, as <c>max-age=3600</c>.</param>
    public static string Of(HttpContext http, string age) => (Caller.Of(http).IsKnown ? "private, " : "public, ") + age;
}
