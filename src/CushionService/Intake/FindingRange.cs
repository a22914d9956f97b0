namespace CushionService.Intake;

/// <summary>The range that a value broke.</summary>
/// <param name="Minimum">The smallest allowed value; null where there is none.</param>
/// <param name="Maximum">The largest allowed value; null where there is none.</param>
/// <remarks>Lengths are in the order's unit, those of a sale in its unit of sale. Counts, shares and amounts have no unit.</remarks>
internal sealed record FindingRange(double? Minimum, double? Maximum);
