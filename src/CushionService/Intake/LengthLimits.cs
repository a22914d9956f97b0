using System.Reflection;
using CushionService.Contract;
using CushionService.Engine.Measures;

namespace CushionService.Intake;

/// <summary>The limits of a length, each with its figure for metric orders.</summary>
internal sealed class LengthLimits
{
    // Both are worked out when the service starts.
    private readonly (Length Minimum, Length Maximum) _imperial;
    private readonly (Length Minimum, Length Maximum) _metric;

    private LengthLimits(Length minimum, Length maximum) =>
        (_imperial, _metric) = ((minimum, maximum), (MetricLimits.Down(minimum), MetricLimits.Up(maximum)));

    /// <summary>What a property's attribute says; null where it says nothing.</summary>
    /// <exception cref="InvalidOperationException">It says what is no length.</exception>
    public static LengthLimits? Of(PropertyInfo property) =>
        property.GetCustomAttribute<LengthRangeAttribute>() is { } range
            ? new LengthLimits(Read(range.Minimum), Read(range.Maximum))
            : null;

    /// <summary>The smallest and the largest length of an order in a unit.</summary>
    /// <param name="unit">The unit of the order, or of a sale. Inches and yards have the limits as stated, metric units round figures
    /// outward.</param>
    public (Length Minimum, Length Maximum) In(LengthUnit unit) => unit is LengthUnit.Inch or LengthUnit.Yard ? _imperial : _metric;

    // Attributes hold text with a unit. It is read once, and a slip in it keeps the service from starting.
    private static Length Read(string text) =>
        LengthText.TryParse(text, LengthUnit.Inch, out Length length)
            ? length
            : throw new InvalidOperationException($"{text} is not a length.");
}
