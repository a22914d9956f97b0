namespace CushionService.Contract;

/// <summary>The range of each number of a list, which the rules, the OpenAPI document and the catalogue read.</summary>
/// <param name="minimum">The smallest value allowed.</param>
/// <param name="maximum">The largest value allowed.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class EntryRangeAttribute(double minimum, double maximum) : Attribute
{
    /// <summary>The smallest value allowed.</summary>
    public double Minimum { get; } = minimum;

    /// <summary>The largest value allowed.</summary>
    public double Maximum { get; } = maximum;
}
