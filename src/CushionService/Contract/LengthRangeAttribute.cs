namespace CushionService.Contract;

/// <summary>The range of a length, read by the validator, the OpenAPI document and the catalogue.</summary>
/// <param name="minimum">The smallest length allowed, with its unit (<c>"1/4 in"</c>).</param>
/// <param name="maximum">The largest length allowed, with its unit.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class LengthRangeAttribute(string minimum, string maximum) : Attribute
{
    /// <summary>The smallest length allowed, with its unit.</summary>
    public string Minimum { get; } = minimum;

    /// <summary>The largest length allowed, with its unit.</summary>
    public string Maximum { get; } = maximum;

    /// <summary>What applies when the length is left out, in words or with its unit; null when nothing does.</summary>
    public string? Default { get; init; }
}
