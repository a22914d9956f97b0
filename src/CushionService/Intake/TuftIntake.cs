using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Trimmings;
using Outline = CushionService.Engine.Specifications.Outlines.Outline;

namespace CushionService.Intake;

/// <summary>Checks tufts against the face that they are spread over, and specifies them.</summary>
/// <remarks>Tufts are spread evenly: of n columns on a width W each has W/n, and the outer ones are half of that from the edge. The pull
/// depth is how far a button sinks below the face.</remarks>
internal static class TuftIntake
{
    private static readonly LengthField<Tufts> ButtonDiameter = RecordForm<Tufts>.Length(nameof(Tufts.ButtonDiameter)),
        PullDepth = RecordForm<Tufts>.Length(nameof(Tufts.PullDepth));

    /// <summary>The tufts; null where they were refused.</summary>
    /// <param name="tufts">The tufts as written.</param>
    /// <param name="body">The cushion.</param>
    /// <param name="findings">Takes what is wrong with the tufts.</param>
    public static TuftSpecification? Read(Tufts tufts, CushionBody body, Findings findings)
    {
        Fields<Tufts> fields = RecordForm<Tufts>.Read(tufts, findings);
        // A tuft is drawn through from face to face.
        if (body.ClosureSide == Side.Bottom)
        {
            findings.Refuse("", "not-combinable", TrimTexts.TuftsOverClosure);
        }

        if (
            body.Outline is not { } outline
            || !fields.IsSound
            || tufts is not { Rows: { } rows, Columns: { } columns }
            || fields.Or(ButtonDiameter, body.Practice.Trims.TuftButton) is not { } button
            || fields.Or(PullDepth, Length.Zero) is not { } pull
        )
        {
            return null;
        }

        // The interval of the grid, rounded down to a nanometre.
        Length across = Length.FromNanometres(outline.Width.Nanometres / columns),
            along = Length.FromNanometres(outline.Depth.Nanometres / rows),
            interval = Length.Min(across, along);
        // A button's breadth is left between two, so that the fabric can be folded there (common practice, no source).
        if (interval < 2 * button)
        {
            findings.Refuse("", "tufts-too-close", TrimTexts.TuftsTooClose(interval, button, 2 * button));
        }

        IsNotTooDeep(pull, outline, body, findings);
        TuftSpecification spread = new(rows, columns, tufts.Grid ?? TuftGrid.Square, button, tufts.Covered ?? false, pull)
        {
            // A grid fills a rectangle evenly; another outline leaves out what would be beyond its seam, or too near to it.
            Within = outline.Kind == OutlineKind.Rectangle ? null : outline,
        };
        if (spread.Count == 0)
        {
            findings.Refuse("", "not-combinable", TrimTexts.TuftsMissFace(button));
            return null;
        }

        return spread;
    }

    // A deep tuft takes up fabric, which is worked out on a rectangle alone, and pulls from both faces towards the middle.
    private static void IsNotTooDeep(Length pull, Outline outline, CushionBody body, Findings findings)
    {
        if (pull > Length.Zero && (outline.Kind != OutlineKind.Rectangle || !body.Offer.Thickness))
        {
            findings.Refuse(PullDepth.Name, "not-combinable", TrimTexts.DeepTufts);
        }
        else if (body.Thickness is { } thickness && 2 * pull >= thickness)
        {
            var half = Length.FromNanometres(thickness.Nanometres / 2);
            findings.RefuseRange(PullDepth.Name, "out-of-range", TrimTexts.PullDepth(half), Length.Zero, half);
        }
    }
}
