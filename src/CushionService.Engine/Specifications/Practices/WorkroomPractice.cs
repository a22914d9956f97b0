using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Specifications.Practices;

/// <summary>How a workroom sews and cuts.</summary>
/// <remarks>The defaults are common practice, no source, except the thread figures.</remarks>
public sealed record WorkroomPractice
{
    /// <summary>The defaults of a workroom that measures in inches.</summary>
    public static WorkroomPractice Imperial { get; } =
        new()
        {
            SeamAllowance = Length.FromInches(0.5m),
            CuttingStep = Length.FromInches(0.125m),
            MeasuringStep = Length.FromInches(0.0625m),
            ZipperTurnUnder = Length.FromInches(0.75m),
            ZipperReturn = Length.FromInches(3),
            HemFold = Length.FromInches(0.5m),
            TapeMargin = Length.FromInches(0.125m),
            EdgeDistance = Length.FromInches(0.125m),
            Kerf = Length.FromInches(0.25m),
            Closures = ClosurePractice.Imperial,
            Shapes = ShapePractice.Imperial,
            Trims = TrimPractice.Imperial,
            Fills = FillPractice.Imperial,
            Stitches = StitchPractice.Imperial,
            Sewing = SewingPractice.Imperial,
            Joins = JoinPractice.Imperial,
        };

    /// <summary>The defaults of a workroom that measures in millimetres.</summary>
    public static WorkroomPractice Metric { get; } =
        new()
        {
            SeamAllowance = Length.FromMillimetres(15),
            CuttingStep = Length.FromMillimetres(1),
            MeasuringStep = Length.FromMillimetres(1),
            ZipperTurnUnder = Length.FromMillimetres(20),
            ZipperReturn = Length.FromMillimetres(75),
            HemFold = Length.FromMillimetres(10),
            TapeMargin = Length.FromMillimetres(3),
            EdgeDistance = Length.FromMillimetres(3),
            Kerf = Length.FromMillimetres(6),
            Closures = ClosurePractice.Metric,
            Shapes = ShapePractice.Metric,
            Trims = TrimPractice.Metric,
            Fills = FillPractice.Metric,
            Stitches = StitchPractice.Metric,
            Sewing = SewingPractice.Metric,
            Joins = JoinPractice.Metric,
        };

    /// <summary>The defaults of a workroom that measures in a unit.</summary>
    public static WorkroomPractice Of(LengthUnit unit) => unit is LengthUnit.Inch or LengthUnit.Yard ? Imperial : Metric;

    /// <summary>The sizes of closures where an order does not say.</summary>
    public required ClosurePractice Closures { get; init; }

    /// <summary>The sizes of what belongs to one construction, where an order does not say.</summary>
    public required ShapePractice Shapes { get; init; }

    /// <summary>The sizes of what is added to a cover, where an order does not say.</summary>
    public required TrimPractice Trims { get; init; }

    /// <summary>Where strips and faces are joined.</summary>
    public required JoinPractice Joins { get; init; }

    /// <summary>How fills are fitted where an order does not say.</summary>
    public required FillPractice Fills { get; init; }

    /// <summary>The sizes of a stitch where an order does not say.</summary>
    public required StitchPractice Stitches { get; init; }

    /// <summary>The distances that a sewing step names.</summary>
    public required SewingPractice Sewing { get; init; }

    /// <summary>Seam allowance for each edge.</summary>
    public required Length SeamAllowance { get; init; }

    /// <summary>Cut sizes are rounded up to a multiple of this; above zero.</summary>
    public required Length CuttingStep { get; init; }

    /// <summary>Lengths that are bought are taken up to a multiple of this, as fine as a tape is read; above zero.</summary>
    public required Length MeasuringStep { get; init; }

    /// <summary>Fabric turned under on each side of a zipper.</summary>
    public required Length ZipperTurnUnder { get; init; }

    /// <summary>How far a zipper section runs round each back corner.</summary>
    public required Length ZipperReturn { get; init; }

    /// <summary>Depth of each turn of the double-folded hems of closures.</summary>
    public required Length HemFold { get; init; }

    /// <summary>Margin of an overlap beyond each edge of its tape.</summary>
    public required Length TapeMargin { get; init; }

    /// <summary>Distance of edge-stitching from a fold: 1/8 in (US Army TM 10-8400-203-23).</summary>
    public required Length EdgeDistance { get; init; }

    /// <summary>How much lower than the cushion is thick a boxing is made: nothing, or 1/4 in for a taut edge.</summary>
    public Length BoxingTautness { get; init; }

    /// <summary>How much larger than the cover foam is cut in width and depth, where an order does not say: nothing to 1/2 in.</summary>
    public Length FoamOversize { get; init; }

    /// <summary>How the cut sizes of rectangular faces meet the cutting step.</summary>
    public FaceRounding FaceRounding { get; init; }

    /// <summary>Length of each fabric lost to squaring its ends.</summary>
    public Length Squaring { get; init; }

    /// <summary>Width of the cut between two pieces of foam: 1/4 in, or 6 mm in a metric workroom.</summary>
    public required Length Kerf { get; init; }

    /// <summary>The stitch that seams are sewn with, from which thread is computed; null where only a ratio is known.</summary>
    public StitchSpecification? Stitch { get; init; }

    /// <summary>Thread used for each length of seam, as a multiple of it; null for the stitch's own, or for about 2.5 (see
    /// <see cref="LockstitchRatio"/>).</summary>
    public decimal? ThreadRatio { get; init; }

    /// <summary>Thread in a lockstitched seam, stitch type 301: about 2.5 times the seam (apparelscience.com, measuring actual thread
    /// consumption).</summary>
    public const decimal LockstitchRatio = 2.5m;

    /// <summary>Thread wasted, as a fraction of what is used: 10 to 15 % (apparelscience.com, the same).</summary>
    public decimal ThreadWaste { get; init; } = 0.15m;
}
