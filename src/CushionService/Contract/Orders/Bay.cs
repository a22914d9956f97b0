using System.ComponentModel.DataAnnotations;

namespace CushionService.Contract.Orders;

/// <summary>Seats along the walls of a bay or round a corner, which meet in mitres. It is made as a cushion for each wall, whose ids are
/// the bay's with <c>-1</c>, <c>-2</c> and so on, and takes the fields of a cushion but the outline; each applies to all of
/// them.</summary>
public sealed record Bay : CushionMake
{
    /// <summary>Lengths of the walls from left to right, as one looks at them from the room.</summary>
    [Required]
    [NumberRange(2, 7)]
    [LengthRange("2 in", "240 in")]
    public IReadOnlyList<Measure>? Walls { get; init; }

    /// <summary>The angle in the room between each wall and the next, in degrees; one fewer than the walls.</summary>
    [Required]
    [NumberRange(1, 6)]
    [EntryRange(60, 179)]
    public IReadOnlyList<double>? Angles { get; init; }

    /// <summary>From the front to the wall, of every seat.</summary>
    [Required]
    [LengthRange("2 in", "120 in")]
    public Measure? Depth { get; init; }

    /// <summary>What each end that meets another is shorter by, along the wall, since two boxings lie there.</summary>
    [LengthRange("0 in", "2 in", Default = "1/4 in, or 6 mm in a metric order")]
    public Measure? Bulk { get; init; }
}
