using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Intake;

/// <summary>Checks the ends of a bolster, and specifies them.</summary>
/// <remarks>The tail is the fabric beyond a tie; the turning is what is folded in at a drawn-up end. Both are lengths along the
/// bolster.</remarks>
internal static class EndsIntake
{
    private static readonly LengthField<Ends> Tail = RecordForm<Ends>.Length(nameof(Ends.Tail)),
        Turning = RecordForm<Ends>.Length(nameof(Ends.Turning));

    /// <summary>The ends; null for another construction, or where a length was refused. A bolster that says nothing of them has flat
    /// ends.</summary>
    /// <param name="ends">The ends as written; null for none.</param>
    /// <param name="body">The cushion.</param>
    public static BolsterEnds? Read(Ends? ends, CushionBody body)
    {
        BolsterEndKind kind = ends?.Kind ?? BolsterEndKind.Flat;
        ShapePractice usual = body.Practice.Shapes;
        Length? tail = usual.Tail,
            turning = usual.EndTurning;
        if (ends is not null)
        {
            Findings at = body.At.Within(nameof(Cushion.Ends));
            Fields<Ends> fields = RecordForm<Ends>.Read(ends, at);
            if (ends.Tail is not null && kind != BolsterEndKind.Tied)
            {
                at.NotApplicable(Tail.Name, FieldTexts.OnlyForTiedEnds(Tail.Name));
            }

            if (ends.Turning is not null && kind == BolsterEndKind.Flat)
            {
                at.NotApplicable(Turning.Name, FieldTexts.NotForFlatEnds(Turning.Name));
            }

            // What was refused is null, and then there are no ends.
            (tail, turning) = (fields.Or(Tail, usual.Tail), fields.Or(Turning, usual.EndTurning));
        }

        return body.Offer.Kind == Construction.Bolster && tail is { } free && turning is { } turned
            ? new BolsterEnds(kind, kind == BolsterEndKind.Tied ? free : Length.Zero, kind == BolsterEndKind.Flat ? Length.Zero : turned)
            : null;
    }
}
