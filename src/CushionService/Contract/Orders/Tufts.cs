using System.ComponentModel.DataAnnotations;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Contract.Orders;

/// <summary>Tufts through the cushion, a button at each end.</summary>
public sealed record Tufts
{
    /// <summary>Rows from front to back.</summary>
    [Required]
    [NumberRange(1, 12)]
    public int? Rows { get; init; }

    /// <summary>Columns from left to right.</summary>
    [Required]
    [NumberRange(1, 24)]
    public int? Columns { get; init; }

    /// <summary>How they stand to each other; square when left out.</summary>
    public TuftGrid? Grid { get; init; }

    /// <summary>Diameter of the buttons; 7/8 in when left out.</summary>
    [LengthRange("1/4 in", "3 in", Default = "7/8 in, or 22 mm in a metric order")]
    public Measure? ButtonDiameter { get; init; }

    /// <summary>Whether the buttons are covered with the top's fabric; not when left out.</summary>
    public bool? Covered { get; init; }

    /// <summary>How deep each is pulled; shallow tufts, which take no fabric up, when left out.</summary>
    [LengthRange("0 in", "6 in", Default = "0 in")]
    public Measure? PullDepth { get; init; }
}
