namespace CushionService.Access;

/// <summary>An API key as it is configured. The key itself is nowhere: its digest is enough to know it by.</summary>
internal sealed class KeyOptions : GrantOptions
{
    /// <summary>Who holds the key. Two keys of one name share one limit, so that the old and the new may both hold while a caller changes
    /// over.</summary>
    public string? Name { get; init; }

    /// <summary>SHA-256 of the key, in hexadecimal.</summary>
    public string? Sha256 { get; init; }

    /// <summary>The key no longer holds from here on; never ends when left out.</summary>
    public DateTimeOffset? NotAfter { get; init; }
}
