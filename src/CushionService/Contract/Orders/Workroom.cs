using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Contract.Orders;

/// <summary>How a workroom sews and cuts. Each setting left out takes the trade's default.</summary>
public sealed record Workroom
{
    /// <summary>Seam allowance for each edge.</summary>
    [LengthRange("1/8 in", "2 in", Default = "1/2 in, or 15 mm in a metric order")]
    public Measure? SeamAllowance { get; init; }

    /// <summary>Cut sizes are rounded up to a multiple of this.</summary>
    [LengthRange("1/64 in", "1 in", Default = "1/8 in, or 1 mm in a metric order")]
    public Measure? CuttingStep { get; init; }

    /// <summary>Fabric turned under on each side of a zipper.</summary>
    [LengthRange("1/4 in", "2 in", Default = "3/4 in, or 20 mm in a metric order")]
    public Measure? ZipperTurnUnder { get; init; }

    /// <summary>How far a zipper section runs round each back corner.</summary>
    [LengthRange("0 in", "12 in", Default = "3 in, or 75 mm in a metric order")]
    public Measure? ZipperReturn { get; init; }

    /// <summary>Length of each fabric lost to squaring its ends.</summary>
    [LengthRange("0 in", "36 in", Default = "0 in")]
    public Measure? Squaring { get; init; }

    /// <summary>
    /// Thread used for each length of seam, as a multiple of the seam; when left out, by the geometry of the stitch, or 2.5 where none is
    /// given.
    /// </summary>
    [NumberRange(1, 30, Default = "the stitch's, or 2.5")]
    public double? ThreadRatio { get; init; }

    /// <summary>Thread wasted, as a fraction of what is used.</summary>
    [NumberRange(0, 1, Default = "0.15")]
    public double? ThreadWaste { get; init; }

    /// <summary>Depth of each turn of the double-folded hems of closures.</summary>
    [LengthRange("1/8 in", "3 in", Default = "1/2 in, or 10 mm in a metric order")]
    public Measure? HemFold { get; init; }

    /// <summary>Margin of an overlap beyond each edge of its tape.</summary>
    [LengthRange("1/16 in", "1 in", Default = "1/8 in, or 3 mm in a metric order")]
    public Measure? TapeMargin { get; init; }

    /// <summary>Distance of edge-stitching from a fold.</summary>
    [LengthRange("1/32 in", "1/2 in", Default = "1/8 in, or 3 mm in a metric order")]
    public Measure? EdgeDistance { get; init; }

    /// <summary>How much lower than the cushion is thick a boxing is made, so that it is taut.</summary>
    [LengthRange("0 in", "1/2 in", Default = "0 in")]
    public Measure? BoxingTautness { get; init; }

    /// <summary>How much larger than the cover foam is cut, where a fill does not say.</summary>
    [LengthRange("0 in", "1 in", Default = "0 in")]
    public Measure? FoamOversize { get; init; }

    /// <summary>How the cut sizes of rectangular faces meet the cutting step; up when left out.</summary>
    public FaceRounding? FaceRounding { get; init; }

    /// <summary>
    /// The stitch that seams are sewn with, from which thread is computed; a lockstitch that takes 2.5 times the seam when left out.
    /// </summary>
    public Stitch? Stitch { get; init; }

    /// <summary>Width of the cut between two pieces of foam on a sheet.</summary>
    [LengthRange("0 in", "1 in", Default = "1/4 in, or 6 mm in a metric order")]
    public Measure? Kerf { get; init; }
}
