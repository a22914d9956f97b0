using System.Reflection;
using CushionService.Contract;
using CushionService.Engine.Measures;

namespace CushionService.Intake;

/// <summary>The limits of a length, each with its figure for metric orders, and for what is sold by the yard.</summary>
internal sealed class LengthLimits
{
    // In nanometres.
    private const long HundredthYard = 9_144_000;

    // All are worked out when the service starts.
    private readonly (Length Minimum, Length Maximum) _imperial;
    private readonly (Length Minimum, Length Maximum) _metric;
    private readonly (Length Minimum, Length Maximum) _yards;

    private LengthLimits(Length minimum, Length maximum)
    {
        _imperial = (minimum, maximum);
        _metric = (MetricLimits.Down(minimum), MetricLimits.Up(maximum));
        _yards = (
            Length.FromNanometres(minimum.Nanometres - (minimum.Nanometres % HundredthYard)),
            maximum.RoundUpTo(Length.FromNanometres(1_000 * HundredthYard))
        );
    }

    /// <summary>What a property's attribute says; null where it says nothing.</summary>
    /// <exception cref="InvalidOperationException">It says what is no length.</exception>
    public static LengthLimits? Of(PropertyInfo property) =>
        property.GetCustomAttribute<LengthRangeAttribute>() is { } range
            ? new LengthLimits(Read(range.Minimum), Read(range.Maximum))
            : null;

    /// <summary>The smallest and the largest length of an order in a unit.</summary>
    /// <param name="unit">The unit of the order, or of a sale. Inches have the limits as stated, metric units round figures
    /// outward, and yards hundredths below and tens above.</param>
    public (Length Minimum, Length Maximum) In(LengthUnit unit) =>
        unit switch
        {
            LengthUnit.Inch => _imperial,
            LengthUnit.Yard => _yards,
            _ => _metric,
        };

    // Attributes hold text with a unit. It is read once, and a slip in it keeps the service from starting.
    private static Length Read(string text) =>
        LengthText.TryParse(text, LengthUnit.Inch, out Length length)
            ? length
            : throw new InvalidOperationException($"{text} is not a length.");
}
