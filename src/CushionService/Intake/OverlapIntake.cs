using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Practices;

namespace CushionService.Intake;

/// <summary>Checks two hemmed strips or flaps that overlap against what they lie across, and specifies them.</summary>
internal static class OverlapIntake
{
    private static readonly LengthField<Closure> Fold = RecordForm<Closure>.Length(nameof(Closure.Fold)),
        Overlap = RecordForm<Closure>.Length(nameof(Closure.Overlap)),
        TapeWidth = RecordForm<Closure>.Length(nameof(Closure.TapeWidth)),
        ButtonDiameter = RecordForm<Closure>.Length(nameof(Closure.ButtonDiameter)),
        TieLength = RecordForm<Closure>.Length(nameof(Closure.TieLength));

    /// <summary>The closure; null where one of its lengths was refused.</summary>
    public static OverlappingClosure? Read(Closure closure, Fields<Closure> fields, Side side, CushionBody body, Findings findings)
    {
        Length? across =
            side == Side.Bottom ? body.Outline?.Depth
            : body.Offer.Thickness ? body.BoxingHeight
            : body.Outline?.Perimeter;
        ClosurePractice usual = body.Practice.Closures;
        bool asSides = closure.Strips == HookAndLoopStrips.AsSides;
        if (
            fields.Or(Fold, body.Practice.HemFold) is not { } fold
            || fields.Or(TapeWidth, usual.TapeWidth) is not { } tape
            || fields.Or(ButtonDiameter, usual.ButtonDiameter) is not { } button
            || fields.Or(TieLength, usual.TieLength) is not { } tie
            || (closure.Overlap is null || asSides ? Usual(closure, side, across, fold, tape, button, body) : fields[Overlap])
                is not { } overlap
            || body.Return is not { } turn
        )
        {
            return null;
        }

        if (across is { } height)
        {
            string field = asSides ? nameof(closure.Strips) : nameof(closure.Overlap);
            HoldsFastening(closure, field, overlap, height, tape, button, body, findings);
            LeavesStrips(field, overlap, height, fold, side, findings);
        }

        return closure.Kind switch
        {
            ClosureKind.HookAndLoop => new HookAndLoopClosure(side, turn, fold, overlap, tape),
            ClosureKind.Buttons => new ButtonClosure(side, turn, fold, overlap, button),
            ClosureKind.Ties => new TieClosure(side, turn, fold, overlap, tie),
            _ => new EnvelopeClosure(side, fold, overlap),
        };
    }

    private static Length? Usual(Closure closure, Side side, Length? across, Length fold, Length tape, Length button, CushionBody body) =>
        closure.Kind switch
        {
            ClosureKind.HookAndLoop when closure.Strips == HookAndLoopStrips.AsSides => across is { } height
            && body.SeamAllowance is { } seam
                ? HookAndLoopClosure.OverlapAsSides(height, seam, fold)
                : null,
            ClosureKind.HookAndLoop => HookAndLoopClosure.NarrowestOverlap(tape, body.Practice.TapeMargin),
            ClosureKind.Buttons => body.Practice.Closures.ButtonedOverlap(button),
            ClosureKind.Ties when side != Side.Bottom => body.Practice.Closures.TiedOverlap,
            _ => across is { } size ? body.Practice.Closures.Envelope.Overlap(size) : null,
        };

    private static void HoldsFastening(
        Closure closure,
        string field,
        Length overlap,
        Length across,
        Length tape,
        Length button,
        CushionBody body,
        Findings findings
    )
    {
        if (closure.Kind == ClosureKind.Buttons && overlap < button)
        {
            string detail = $"An overlap of {findings.Text(overlap)} is too narrow for a button of {findings.Text(button)}.";
            findings.RefuseRange(field, "overlap-too-narrow", detail, button, across);
        }

        Length narrowest = HookAndLoopClosure.NarrowestOverlap(tape, body.Practice.TapeMargin);
        if (closure.Kind == ClosureKind.HookAndLoop && overlap < narrowest)
        {
            string needed = $"{findings.Text(narrowest)}, the tape's width and {findings.Text(body.Practice.TapeMargin)} at each edge";
            string detail =
                closure.Strips == HookAndLoopStrips.AsSides
                    ? $"Strips cut as high as the sides overlap by {findings.Text(overlap)} on a boxing of {findings.Text(across)}. They need "
                        + $"{needed}: a boxing of {findings.Text(across + narrowest - overlap)} or more."
                    : $"An overlap of {findings.Text(overlap)} is too narrow. It must be at least {needed}.";
            findings.RefuseRange(field, "overlap-too-narrow", detail, narrowest, across);
        }
    }

    // Neither strip may reach past the other's seam, and each must show something beyond its hem.
    private static void LeavesStrips(string field, Length overlap, Length across, Length fold, Side side, Findings findings)
    {
        Length visible = OverlappingClosure.VisibleHeight(across, overlap);
        if (overlap > across || (overlap == across && side == Side.Bottom))
        {
            string detail = $"An overlap of {findings.Text(overlap)} is deeper than the {findings.Text(across)} that it lies across.";
            findings.RefuseRange(field, "overlap-too-deep", detail, null, across);
        }
        else if (fold >= visible)
        {
            string detail = $"A hem of {findings.Text(fold)} must be less deep than its strip shows, {findings.Text(visible)}.";
            findings.RefuseRange(Fold.Name, "hem-too-deep", detail, null, visible);
        }
        else if (2 * fold > visible)
        {
            string detail = $"A hem of {findings.Text(fold)} covers more than half of a strip that shows {findings.Text(visible)}.";
            findings.Warn(Fold.Name, "hem-eats-strip", detail);
        }
    }
}
