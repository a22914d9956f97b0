namespace CushionService.Grpc.Mapping;

/// <summary>Whether anything in a message could not be read as it stands, so that it must be gone through again in detail.</summary>
internal sealed class MappingErrors(string currency)
{
    /// <summary>Whether there is a doubt.</summary>
    public bool Any { get; set; }

    /// <summary>The order's currency; empty when it names none.</summary>
    public string Currency { get; } = currency;
}
