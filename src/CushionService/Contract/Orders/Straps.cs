using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Contract.Orders;

/// <summary>Straps across the underside, caught in the left and the right seam, by their finished sizes.</summary>
public sealed record Straps
{
    /// <summary>How many; 2 when left out.</summary>
    [NumberRange(1, 6, Default = "2")]
    public int? Count { get; init; }

    /// <summary>Finished width; 1 in when left out.</summary>
    [LengthRange("1/4 in", "4 in", Default = "1 in, or 25 mm in a metric order")]
    public Measure? Width { get; init; }

    /// <summary>Finished length from seam to seam, no less than the cushion is wide where they lie; as wide when left out.</summary>
    [LengthRange("2 in", "260 in", Default = "the cushion's width")]
    public Measure? Length { get; init; }

    /// <summary>How each is made; folded when left out.</summary>
    public StrapMake? Make { get; init; }

    /// <summary>Their fabric; that of the bottom when left out.</summary>
    public string? Fabric { get; init; }
}
