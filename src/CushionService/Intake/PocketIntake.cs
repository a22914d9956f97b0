using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Intake;

/// <summary>Checks a pocket against the side of the boxing that it is on, and specifies it.</summary>
/// <remarks>A pocket is a patch on the boxing, its sizes finished. It may be as high as the boxing, whose seams then hold it above and
/// below.</remarks>
internal static class PocketIntake
{
    private static readonly LengthField<Pocket> Width = RecordForm<Pocket>.Length(nameof(Pocket.Width)),
        Height = RecordForm<Pocket>.Length(nameof(Pocket.Height));

    /// <summary>The side that a pocket is on: the right where it does not say.</summary>
    /// <param name="pocket">The pocket as written.</param>
    public static Side SideOf(Pocket pocket) => pocket.Side ?? Side.Right;

    /// <summary>The pocket; null where it was refused.</summary>
    /// <param name="pocket">The pocket as written.</param>
    /// <param name="body">The cushion, its closure read.</param>
    /// <param name="findings">Takes what is wrong with the pocket.</param>
    public static PocketSpecification? Read(Pocket pocket, CushionBody body, Findings findings)
    {
        Fields<Pocket> fields = RecordForm<Pocket>.Read(pocket, findings);
        Side side = SideOf(pocket);
        body.NeedsSide(side, $"{nameof(Cushion.Pocket)}.{nameof(pocket.Side)}");
        // One thing a side: the closure, the handle or a pocket.
        if (body.IsOpenOn(side))
        {
            findings.Refuse(nameof(pocket.Side), "not-combinable", TrimTexts.PocketOnClosure);
        }
        else if (body.Written.Handle is not null && body.HandleSides.Contains(side))
        {
            findings.Refuse(nameof(pocket.Side), "not-combinable", TrimTexts.PocketOnHandle);
        }

        if (fields[Height] is { } tall && body.BoxingHeight is { } boxing && tall > boxing)
        {
            findings.RefuseRange(Height.Name, "out-of-range", TrimTexts.PocketTooHigh(boxing), null, boxing);
        }

        if (fields[Width] is { } wide && body.FreeLength(side) is { } free && free > Length.Zero && wide > free)
        {
            findings.RefuseRange(Width.Name, "out-of-range", TrimTexts.PocketTooWide(free), null, free);
        }

        return fields[Width] is { } width && fields[Height] is { } height ? new PocketSpecification(side, width, height) : null;
    }
}
