using System.ComponentModel.DataAnnotations;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Contract.Orders;

/// <summary>How a cover opens.</summary>
public sealed record Closure
{
    /// <summary>The kind of closure.</summary>
    [Required]
    public ClosureKind? Kind { get; init; }

    /// <summary>
    /// Where it is; the back when left out, except an envelope, and any closure of a cushion that takes it nowhere else, which are on
    /// the underside.
    /// </summary>
    public Side? Side { get; init; }

    /// <summary>How far the zipper section of a wrapped boxing runs round each back corner; the workroom's when left out.</summary>
    [LengthRange("0 in", "12 in", Default = "the workroom's")]
    public Measure? Return { get; init; }

    /// <summary>Whether a zipper in a boxing runs along its side alone, or round both neighbouring sides too; its side alone when left
    /// out.</summary>
    public ZipperExtent? Extent { get; init; }

    /// <summary>The pair of sides that the flaps of an envelope come from; the front and the back when left out.</summary>
    public FlapSides? Flaps { get; init; }

    /// <summary>Fabric turned under on each side of a zipper; the workroom's when left out.</summary>
    [LengthRange("1/4 in", "2 in", Default = "the workroom's")]
    public Measure? TurnUnder { get; init; }

    /// <summary>
    /// How far a fold of one edge lies over a zipper and hides it, less than its turn-under; the zipper is centred when left out.
    /// </summary>
    [LengthRange("1/4 in", "1 1/2 in")]
    public Measure? Lap { get; init; }

    /// <summary>Size of a zipper's chain: 3, 5 or 10; not said when left out.</summary>
    [NumberRange(3, 10)]
    public int? ZipperSize { get; init; }

    /// <summary>How many sliders a zipper has: two open it from the middle; 1 when left out.</summary>
    [NumberRange(1, 2, Default = "1")]
    public int? Sliders { get; init; }

    /// <summary>Colour of a zipper, in words; at most 40 characters.</summary>
    [MaxLength(40)]
    public string? ZipperColour { get; init; }

    /// <summary>Depth of each turn of the double-folded hem of an overlapping closure; the workroom's when left out.</summary>
    [LengthRange("1/8 in", "3 in", Default = "the workroom's")]
    public Measure? Fold { get; init; }

    /// <summary>How far the strips or flaps overlap. When left out: the tape's width and a margin at each edge of it for
    /// hook-and-loop; the button's diameter and 1/4 in at each edge for buttons; 1 1/2 in for ties on a boxing; for an envelope, and for
    /// ties on the underside, 3 in up to 14 in across, 4 in up to 18 in, 5 in above.</summary>
    [LengthRange("1/4 in", "12 in")]
    public Measure? Overlap { get; init; }

    /// <summary>Width of the hook-and-loop tape; 3/4 in when left out.</summary>
    [LengthRange("1/4 in", "4 in", Default = "3/4 in, or 20 mm in a metric order")]
    public Measure? TapeWidth { get; init; }

    /// <summary>How high the strips of a boxed hook-and-loop closure are cut; by the overlap when left out.</summary>
    public HookAndLoopStrips? Strips { get; init; }

    /// <summary>Diameter of the buttons; 3/4 in when left out.</summary>
    [LengthRange("1/4 in", "3 in", Default = "3/4 in, or 20 mm in a metric order")]
    public Measure? ButtonDiameter { get; init; }

    /// <summary>Finished length of each tie; 8 in when left out.</summary>
    [LengthRange("3 in", "20 in", Default = "8 in, or 200 mm in a metric order")]
    public Measure? TieLength { get; init; }
}
