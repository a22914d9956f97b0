namespace CushionService.Access;

/// <summary>Whose tokens (JSON Web Tokens, RFC 9068) are accepted. A change takes effect at the next start. Scopes come
/// from the token; the limits are configured here.</summary>
internal sealed class TokenOptions : GrantOptions
{
    /// <summary>The issuer's address; its keys are found there (OpenID Connect Discovery). No tokens are accepted when
    /// left out.</summary>
    public string? Authority { get; init; }

    /// <summary>The name that the issuer knows this service by; required with an authority.</summary>
    public string? Audience { get; init; }

    /// <summary>Whether the authority is on this machine: then it may be asked without TLS.</summary>
    public bool IsLocal => Uri.TryCreate(Authority, UriKind.Absolute, out Uri? address) && address.IsLoopback;

    /// <summary>What is wrong with the authority's address; null for nothing.</summary>
    public string? Fault =>
        Authority is null ? null
        : !Uri.TryCreate(Authority, UriKind.Absolute, out Uri? address) || address.Query.Length > 0 || address.Fragment.Length > 0
            ? "Access:Tokens:Authority must be the address of the issuer, as https://login.example/realm."
        : address.Scheme != Uri.UriSchemeHttps && !IsLocal
            ? "Access:Tokens:Authority must be https: who can change its keys on the way could make tokens."
        : null;
}
