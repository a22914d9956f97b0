using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;

namespace CushionService.Contract.Orders;

/// <summary>A corner of a polygon, written as a pair: <c>[x, y]</c>.</summary>
[JsonConverter(typeof(PairConverter<Corner, Measure>))]
public sealed record Corner : IPair<Corner, Measure>
{
    /// <summary>From left to right.</summary>
    [Required]
    public Measure? X { get; init; }

    /// <summary>From front to back, or along the fabric.</summary>
    [Required]
    public Measure? Y { get; init; }

    Measure IPair<Corner, Measure>.X => X ?? default;

    Measure IPair<Corner, Measure>.Y => Y ?? default;

    static Corner IPair<Corner, Measure>.Of(Measure x, Measure y) => new() { X = x, Y = y };
}
