using System.ComponentModel.DataAnnotations;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Contract.Orders;

/// <summary>The edging in the seams round the faces. Which fields apply depends on the kind.</summary>
public sealed record Edging
{
    /// <summary>The kind of edging.</summary>
    [Required]
    public EdgingKind? Kind { get; init; }

    /// <summary>The seams in which it lies, each once; the usual ones of the construction when left out.</summary>
    [NumberRange(1, 3)]
    public IReadOnlyList<EdgingPlace>? At { get; init; }

    /// <summary>Diameter of a welt's cord, or of a lip cord; 3/8 in for the latter when left out.</summary>
    [LengthRange("1/16 in", "2 in", Default = "5/32 in, or 4 mm in a metric order")]
    public Measure? CordDiameter { get; init; }

    /// <summary>How the strips of a welt or of flat piping lie on the fabric; on the bias when left out.</summary>
    public WeltCut? Cut { get; init; }

    /// <summary>Its fabric; that of the top when left out.</summary>
    public string? Fabric { get; init; }

    /// <summary>Length of a ruffle's strip for each length of seam; 2 when left out.</summary>
    [NumberRange(1.1, 4, Default = "2")]
    public double? Fullness { get; init; }

    /// <summary>How far it extends: needed for a ruffle or a flange; 1/8 in for flat piping, 2 in for a fringe, 1/2 in for the width of a
    /// gimp when left out.</summary>
    [LengthRange("1/16 in", "12 in")]
    public Measure? Depth { get; init; }

    /// <summary>How the outer edge of a ruffle is finished; folded when left out.</summary>
    public RuffleLining? Lining { get; init; }

    /// <summary>How a bought trim is fastened: a lip cord is sewn in, a gimp on, a fringe in when left out.</summary>
    public TrimAttachment? Attached { get; init; }

    /// <summary>From the seam to the first row of topstitching, and from each row to the next.</summary>
    [LengthRange("1/16 in", "2 in", Default = "1/4 in, or 6 mm in a metric order")]
    public Measure? Distance { get; init; }

    /// <summary>Rows of topstitching; 1 when left out.</summary>
    [NumberRange(1, 2, Default = "1")]
    public int? Rows { get; init; }
}
