namespace CushionService.Grpc.Mapping;

/// <summary>Whether a message had anything that could not be mapped. The mapping only notes that there was an error,
/// which costs nothing; <see cref="MessageDiagnosis"/> then goes through the message again to name every one with its
/// place.</summary>
/// <param name="currency">The order's currency, which amounts must have; empty when it names none.</param>
internal sealed class MappingErrors(string currency)
{
    /// <summary>Whether there was a mapping error.</summary>
    public bool Any { get; set; }

    /// <summary>The order's currency, an ISO 4217 code; empty when it names none.</summary>
    public string Currency { get; } = currency;
}
