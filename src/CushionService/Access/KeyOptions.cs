namespace CushionService.Access;

/// <summary>An API key as it is configured. The key itself is nowhere: its digest is enough to recognise it.</summary>
internal sealed class KeyOptions : GrantOptions
{
    /// <summary>Who has the key. Two keys of one name share one limit, so that an old and a new key may both be valid
    /// while a caller changes over.</summary>
    public string? Name { get; init; }

    /// <summary>SHA-256 of the key, as 64 hexadecimal digits.</summary>
    public string? Sha256 { get; init; }

    /// <summary>From this time on the key is no longer valid; it never expires when left out.</summary>
    public DateTimeOffset? NotAfter { get; init; }
}
