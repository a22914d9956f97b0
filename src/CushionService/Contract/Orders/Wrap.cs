using System.ComponentModel.DataAnnotations;
using CushionService.Engine.Specifications.Fillings;

namespace CushionService.Contract.Orders;

/// <summary>Batting round a block of foam.</summary>
public sealed record Wrap
{
    /// <summary>The stock that it comes from, or the item that is bought; the order's only batting, or batting, when left out.</summary>
    [RegularExpression(Identifier.Pattern)]
    public string? Stock { get; init; }

    /// <summary>What it covers; top, front and underside when left out.</summary>
    public WrapSides? Sides { get; init; }

    /// <summary>How many layers; 1 when left out.</summary>
    [NumberRange(1, 6, Default = "1")]
    public int? Layers { get; init; }
}
