namespace CushionService.Access;

/// <summary>The configuration section <c>Access</c>: who may call. Keys and the anonymous grant are read anew when the
/// configuration changes.</summary>
internal sealed class AccessOptions
{
    /// <summary>The section's name.</summary>
    public const string Section = "Access";

    /// <summary>What a caller without a key or a token may do. When left out: everything, as long as no key and no
    /// authority is configured, and then what a shop's page needs.</summary>
    public GrantOptions? Anonymous { get; init; }

    /// <summary>The API keys.</summary>
    public KeyOptions[] Keys { get; init; } = [];

    /// <summary>The publishable keys, which shops put into their pages.</summary>
    public PageKeyOptions[] Publishable { get; init; } = [];

    /// <summary>Whose tokens are accepted.</summary>
    public TokenOptions Tokens { get; init; } = new();

    /// <summary>The pages of other sites that may call from a browser. A change takes effect at the next start.</summary>
    public string[] Origins { get; init; } = [];

    /// <summary>Networks of balancers whose headers are believed. A change takes effect at the next start.</summary>
    public string[] Proxies { get; init; } = [];

    /// <summary>A file with more of this section, read again when it changes.</summary>
    public string? File { get; init; }
}
