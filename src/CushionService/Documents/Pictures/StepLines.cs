using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Scenes;

namespace CushionService.Documents.Pictures;

/// <summary>The lines of a cushion at which a step works: the seams that it sews, the edge that it hems, or the edge that a trim is fixed
/// to.</summary>
internal static class StepLines
{
    /// <summary>The lines.</summary>
    /// <param name="step">The cushion, with the panels to look at.</param>
    /// <param name="key">What the step says: "step.hem"; empty when not known.</param>
    public static IEnumerable<SceneLine> Of(PictureSource step, string key) =>
        key switch
        {
            "step.hem" => Hems(step),
            "step.welt-corners"
            or "step.welt-sides"
            or "step.welt-round"
            or "step.piping-baste"
            or "step.trim-baste"
            or "step.trim-on"
            or "step.flange-baste"
            or "step.ruffle-baste" => EdgingLines
                .Of(step.Scene)
                .SelectMany(edging => edging.Lines)
                .Where(line => step.Shows(line.Edge.Part)),
            _ => step.Scene.Seams.Where(seam => Joins(step, seam.Seam) && IsSewn(key, seam.Seam)).SelectMany(seam => seam.Lines),
        };

    private static IEnumerable<SceneLine> Hems(PictureSource step) =>
        from part in step.Scene.Parts
        where step.Shows(part.Panel.Part)
        from edge in part.Panel.Edges
        where edge.Finish.Kind == FinishKind.Hem
        select part.LineOf(new EdgeRef(part.Panel.Part, edge.Name));

    // A seam between panels that the step handles: of several, one that joins two of them.
    private static bool Joins(PictureSource step, Seam seam)
    {
        bool within = seam.One.Concat(seam.Other).All(edge => step.Shows(edge.Part));
        return within && (step.Shown!.Count == 1 || seam.One.Concat(seam.Other).Select(edge => edge.Part).Distinct().Count() > 1);
    }

    // A zipper goes into its own seam, the rest of the sides are sewn without it, and a face is sewn to a band that is closed already.
    private static bool IsSewn(string key, Seam seam) =>
        key switch
        {
            "step.seam-zipper-ends" or "step.seam-zipper-centred" or "step.seam-zipper-lapped" or "step.seam-zipper-edged" => seam.Kind
                == SeamKind.Zipper,
            "step.rest-together" or "step.close-loop" or "step.join-strip" => seam.Kind != SeamKind.Zipper,
            "step.to-boxing" => seam.One.Concat(seam.Other).Any(edge => edge.Part.Kind is PartKind.Top or PartKind.Bottom),
            _ => true,
        };
}
