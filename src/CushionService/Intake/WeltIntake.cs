using System.Collections.Immutable;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Intake;

/// <summary>Checks a welt against the boxing and the seams that it is sewn into, and specifies it.</summary>
/// <remarks>A welt is a cord in a strip of fabric, which is cut on the bias, or straight along or across the bolt. The bias gives on a
/// curve.</remarks>
internal static class WeltIntake
{
    private static readonly LengthField<Edging> CordDiameter = RecordForm<Edging>.Length(nameof(Edging.CordDiameter));

    /// <summary>The welt; null where its cord was refused.</summary>
    /// <param name="edging">The edging as written.</param>
    /// <param name="fields">Its fields.</param>
    /// <param name="places">The seams that it is sewn into.</param>
    /// <param name="body">The cushion.</param>
    /// <param name="findings">Takes what is unwise.</param>
    public static WeltSpecification? Read(
        Edging edging,
        Fields<Edging> fields,
        ImmutableArray<EdgingPlace> places,
        CushionBody body,
        Findings findings
    )
    {
        if (fields.Or(CordDiameter, body.Practice.Trims.CordDiameter) is not { } cord)
        {
            return null;
        }

        WarnOfCurve(edging, body, findings);
        // The cords of both seams take half a diameter each of the boxing's height.
        if (
            body.Thickness is { } thickness
            && places.Count(place => place != EdgingPlace.Corners) * cord > Length.FromNanometres(thickness.Nanometres / 2)
        )
        {
            findings.Warn(CordDiameter.Name, "cord-thick-for-boxing", TrimTexts.CordOnBoxing(cord, thickness));
        }

        // The foot runs beside the cord, on the seam allowance (common practice, no source).
        if (body.SeamAllowance is { } seam && cord > 2 * seam)
        {
            findings.Warn(CordDiameter.Name, "cord-thick-for-seam", TrimTexts.CordInSeam(cord, seam));
        }

        return new WeltSpecification(places, cord, edging.Cut ?? WeltCut.Bias) { IsCutUsual = edging.Cut is null };
    }

    /// <summary>Flat piping; null where its depth was refused.</summary>
    /// <param name="edging">The edging as written.</param>
    /// <param name="depth">How far it shows; null where that was refused.</param>
    /// <param name="places">The seams that it is sewn into.</param>
    /// <param name="body">The cushion.</param>
    /// <param name="findings">Takes what is unwise.</param>
    public static FlatPipingSpecification? ReadFlat(
        Edging edging,
        Length? depth,
        ImmutableArray<EdgingPlace> places,
        CushionBody body,
        Findings findings
    )
    {
        if (depth is not { } shown)
        {
            return null;
        }

        WarnOfCurve(edging, body, findings);
        return new FlatPipingSpecification(places, shown, edging.Cut ?? WeltCut.Bias) { IsCutUsual = edging.Cut is null };
    }

    private static void WarnOfCurve(Edging edging, CushionBody body, Findings findings)
    {
        if (edging.Cut is WeltCut.Crosswise or WeltCut.Lengthwise && body.Outline is { HasCorners: false })
        {
            findings.Warn(nameof(edging.Cut), "straight-welt-on-curve", TrimTexts.StraightWelt);
        }
    }
}
