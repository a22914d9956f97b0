namespace CushionService.Contract;

/// <summary>The range of a number or of a list's length, read by the validator, the OpenAPI document and the catalogue.</summary>
/// <param name="minimum">The smallest value allowed.</param>
/// <param name="maximum">The largest value allowed.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class NumberRangeAttribute(double minimum, double maximum) : Attribute
{
    /// <summary>The smallest value allowed.</summary>
    public double Minimum { get; } = minimum;

    /// <summary>The largest value allowed.</summary>
    public double Maximum { get; } = maximum;

    /// <summary>What applies when the number is left out; null when nothing does.</summary>
    public string? Default { get; init; }
}
