using System.ComponentModel.DataAnnotations;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Contract.Orders;

/// <summary>Channels of equal width stitched into a rectangular top.</summary>
public sealed record Channels
{
    /// <summary>How many.</summary>
    [Required]
    [NumberRange(2, 60)]
    public int? Count { get; init; }

    /// <summary>How far each channel rises over its width, at most half of it; channels are stitched flat when left out.</summary>
    [LengthRange("1/16 in", "12 in")]
    public Measure? Crown { get; init; }

    /// <summary>Share of the finished size that flat stitching draws in, each way.</summary>
    [NumberRange(0, 0.1, Default = "0.02")]
    public double? TakeUp { get; init; }

    /// <summary>Which way they run: lengthwise from front to back, or across; lengthwise when left out.</summary>
    public ChannelDirection? Direction { get; init; }
}
