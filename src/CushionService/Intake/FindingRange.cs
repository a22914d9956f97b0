namespace CushionService.Intake;

/// <summary>The range that a value broke, in the order's units.</summary>
internal sealed record FindingRange(double? Minimum, double? Maximum);
