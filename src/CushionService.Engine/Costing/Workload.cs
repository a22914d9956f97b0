using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Pricing;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Costing;

/// <summary>What the workroom does to make a cushion.</summary>
public static class Workload
{
    /// <summary>The operations of one cushion, each with how often it is done, at least once.</summary>
    /// <param name="cushion">A line of cushions; its quantity is not counted here.</param>
    /// <returns>In the order of a job: the construction and its closure first, then what is added.</returns>
    public static IEnumerable<(Operation Operation, int Times)> Of(CushionSpecification cushion)
    {
        TrimSpecification trim = cushion.Trim;
        return new (Operation Operation, int Times)[]
        {
            (Operation.Of(cushion.Construction), 1),
            (Operation.Of(cushion.Closure.Kind), 1),
            (Operation.Of(Addition.Round), cushion.Outline.HasCorners ? 0 : 1),
            (Operation.Of(Addition.Welt), (trim.Edging as WeltSpecification)?.At.Length ?? 0),
            (Operation.Of(Addition.Ruffle), (trim.Edging as RuffleSpecification)?.At.Length ?? 0),
            (Operation.Of(Addition.FlatPiping), (trim.Edging as FlatPipingSpecification)?.At.Length ?? 0),
            (Operation.Of(Addition.BoughtTrim), (trim.Edging as BoughtTrimSpecification)?.At.Length ?? 0),
            (Operation.Of(Addition.Topstitching), (trim.Edging as TopstitchSpecification)?.At.Length ?? 0),
            (Operation.Of(Addition.FrenchSeam), (trim.Edging as FrenchSeamSpecification)?.At.Length ?? 0),
            (Operation.Of(Addition.Channel), cushion.Channels?.Count ?? 0),
            (Operation.Of(Addition.Tuft), trim.Tufts?.Count ?? 0),
            (Operation.Of(Addition.Tie), trim.Ties?.Pairs ?? 0),
            (Operation.Of(Addition.Strap), trim.Straps?.Count ?? 0),
            (Operation.Of(Addition.Handle), cushion.Handle?.Sides.Length ?? 0),
            (Operation.Of(Addition.Pocket), trim.Pocket is null ? 0 : 1),
            (Operation.Of(Addition.Eyelet), trim.Vents),
            (Operation.Of(Addition.AntiSlip), trim.Base == BaseKind.AntiSlip ? 1 : 0),
            (Operation.Of(Addition.InnerCover), cushion.Fabrics.InnerCover is null ? 0 : 1),
        }.Where(done => done.Times > 0);
    }
}
