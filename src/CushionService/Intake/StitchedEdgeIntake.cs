using System.Collections.Immutable;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Intake;

/// <summary>Checks edges that are made by stitching alone, and specifies them.</summary>
internal static class StitchedEdgeIntake
{
    private static readonly LengthField<Edging> Distance = RecordForm<Edging>.Length(nameof(Edging.Distance));

    /// <summary>Topstitching; null where its distance was refused.</summary>
    /// <param name="edging">The edging as written.</param>
    /// <param name="fields">Its fields.</param>
    /// <param name="places">The seams that it follows.</param>
    /// <param name="body">The cushion.</param>
    /// <param name="findings">Takes what is wrong with the edging.</param>
    public static TopstitchSpecification? ReadTopstitch(
        Edging edging,
        Fields<Edging> fields,
        ImmutableArray<EdgingPlace> places,
        CushionBody body,
        Findings findings
    )
    {
        int rows = edging.Rows ?? 1;
        if (!fields.IsSound || fields.Or(Distance, body.Practice.Trims.TopstitchDistance) is not { } distance)
        {
            return null;
        }

        // Rows beside opposite edges of a face would meet.
        if (body.Outline is { } outline && Length.Min(outline.Width, outline.Depth) is var face && 2L * rows * distance >= face)
        {
            findings.Refuse(Distance.Name, "out-of-range", TrimTexts.TopstitchOnBoxing(rows, distance, face));
        }

        // The seam allowances of a face and a boxing are turned to one side and must be caught by every row; where two faces meet, both are
        // stitched together over what lies between them.
        bool turned = body.Offer.Thickness || body.Offer.EdgingOf(EdgingKind.Topstitched)?.Places is not [EdgingPlace.Top];
        if (turned && body.SeamAllowance is { } allowance && rows * distance > allowance)
        {
            var most = Length.FromNanometres(allowance.Nanometres / rows);
            findings.RefuseRange(
                Distance.Name,
                "out-of-range",
                TrimTexts.TopstitchBeyondAllowance(rows, rows * distance, allowance, most),
                null,
                most
            );
        }

        return new TopstitchSpecification(places, distance, rows);
    }

    /// <summary>A French seam, in a seam without a closure, without inside corners, and without what else is caught in it.</summary>
    /// <param name="places">The seam.</param>
    /// <param name="body">The cushion, its closure read.</param>
    /// <param name="findings">Takes what is wrong with the edging.</param>
    public static FrenchSeamSpecification ReadFrench(ImmutableArray<EdgingPlace> places, CushionBody body, Findings findings)
    {
        Length second = body.Practice.Trims.FrenchSeam,
            least = second + body.Practice.Trims.LeastFrenchSeam;
        if (body.SeamAllowance is { } allowance && allowance < least)
        {
            body.At.RefuseRange(nameof(Cushion.SeamAllowance), "out-of-range", TrimTexts.FrenchSeamAllowance(least), least, null);
        }

        if (body.ClosureSide is { } side && side != Side.Bottom)
        {
            findings.Refuse(nameof(Edging.Kind), "not-combinable", TrimTexts.FrenchSeamClosure);
        }

        if (body.Outline is { HasInsideCorners: true } outline)
        {
            findings.Refuse(nameof(Edging.Kind), "not-combinable", TrimTexts.FrenchSeamCorners(outline.Kind));
        }

        Cushion written = body.Written;
        foreach (
            (string field, bool given) in ((string, bool)[])
                [
                    (nameof(written.Ties), written.Ties is not null),
                    (nameof(written.Straps), written.Straps is not null),
                    (nameof(written.Base), written.Base is BaseKind.AntiSlip),
                ]
        )
        {
            if (given)
            {
                findings.Refuse(nameof(Edging.Kind), "not-combinable", TrimTexts.FrenchSeamCaught(FieldNames.Words(field)));
            }
        }

        return new FrenchSeamSpecification(places, second);
    }
}
