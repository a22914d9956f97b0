using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Contract.Orders;

/// <summary>Ties, two by two in the seam of a side, by their finished sizes.</summary>
public sealed record Ties
{
    /// <summary>How many pairs; 2 when left out.</summary>
    [NumberRange(1, 8, Default = "2")]
    public int? Pairs { get; init; }

    /// <summary>The side in whose seam they are caught; the back when left out.</summary>
    public Side? Side { get; init; }

    /// <summary>Finished length of each; 12 in when left out.</summary>
    [LengthRange("2 in", "40 in", Default = "12 in, or 300 mm in a metric order")]
    public Measure? Length { get; init; }

    /// <summary>Finished width; 1/2 in when left out.</summary>
    [LengthRange("1/4 in", "3 in", Default = "1/2 in, or 13 mm in a metric order")]
    public Measure? Width { get; init; }

    /// <summary>How each is made; folded when left out.</summary>
    public StrapMake? Make { get; init; }

    /// <summary>Their fabric; that of the top when left out.</summary>
    public string? Fabric { get; init; }
}
