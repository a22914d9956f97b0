namespace CushionService.Rejections;

/// <summary>The address that explains a code: the <c>type</c> of a problem (RFC 9457, section 3.1.1), which the service itself
/// serves.</summary>
internal static class ProblemAddress
{
    /// <summary>The path below which the codes are explained.</summary>
    public const string Path = "/problems";

    /// <summary>The setting with the service's public address, such as <c>https://cushions.example.org</c>. When left out, the address
    /// under which the call came.</summary>
    public const string Setting = "PUBLIC_URL";

    /// <summary>The address of a code where no call says under which name the service is known: relative to it.</summary>
    public static string Of(string code) => $"{Path}/{code}";

    /// <summary>The address of a code as the caller reaches the service.</summary>
    /// <param name="code">The code.</param>
    /// <param name="http">The call.</param>
    public static string Of(string code, HttpContext http) => Base(http) + Of(code);

    private static string Base(HttpContext http)
    {
        // A call that no host has made has no services.
        string? known = http.RequestServices?.GetService<IConfiguration>()?[Setting];
        return known is { Length: > 0 } ? known.TrimEnd('/')
            : http.Request.Host.HasValue ? $"{http.Request.Scheme}://{http.Request.Host}{http.Request.PathBase}"
            : "";
    }
}
