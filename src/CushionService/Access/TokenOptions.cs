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
}
