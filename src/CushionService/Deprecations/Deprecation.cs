using System.Globalization;

namespace CushionService.Deprecations;

/// <summary>That a call is deprecated: since when, and until when it is answered. It is part of the metadata of the endpoint.</summary>
/// <param name="Since">The day on which callers were told.</param>
/// <param name="Sunset">The day after which the call may be gone: at least a year later.</param>
internal sealed record Deprecation(DateOnly Since, DateOnly Sunset)
{
    /// <summary>Tells a caller in the headers of the answer (RFC 9745 and RFC 8594).</summary>
    public void Write(HttpResponse response)
    {
        response.Headers["Deprecation"] = string.Create(CultureInfo.InvariantCulture, $"@{Start(Since).ToUnixTimeSeconds()}");
        response.Headers["Sunset"] = Start(Sunset).ToString("R", CultureInfo.InvariantCulture);
        response.Headers.Append("Link", "</guide/compatibility.md>; rel=\"deprecation\"; type=\"text/html\"");
    }

    private static DateTimeOffset Start(DateOnly day) => new(day.ToDateTime(TimeOnly.MinValue), TimeSpan.Zero);
}
