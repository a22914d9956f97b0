using System.ComponentModel.DataAnnotations;
using CushionService.Engine.Measures;

namespace CushionService.Contract.Orders;

/// <summary>How a fabric is sold: by length, or by weight, a length being cut and weighed.</summary>
public sealed record Sale
{
    /// <summary>The unit of sale: yards, metres, or of a fabric whose weight is known pounds or kilograms.</summary>
    [Required]
    public SaleUnit? Unit { get; init; }

    /// <summary>The step that the shop cuts by, in the unit of sale: <c>"1/8"</c>, <c>"1/3"</c>, 0.1.</summary>
    [Required]
    [LengthRange("10 mm", "100 m")]
    public Measure? Step { get; init; }

    /// <summary>The least that is sold, in the unit of sale; one step when left out.</summary>
    [LengthRange("0 m", "100 m", Default = "one step")]
    public Measure? Minimum { get; init; }
}
