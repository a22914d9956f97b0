namespace CushionService.Client;

/// <summary>How a client reaches the service.</summary>
public sealed class CushionClientOptions
{
    /// <summary>The address of the service.</summary>
    public Uri Address { get; set; } = new("http://localhost:8080");

    /// <summary>The API key; null for none.</summary>
    public string? Key { get; set; }

    /// <summary>The language of sentences: <c>en</c>, <c>de</c>, <c>fr</c> or <c>es</c>; null for English.</summary>
    public string? Language { get; set; }

    /// <summary>How often a call is sent at most, the first time too.</summary>
    public int Attempts { get; set; } = 5;

    /// <summary>How long one attempt may take.</summary>
    public TimeSpan Timeout { get; set; } = TimeSpan.FromSeconds(60);
}
