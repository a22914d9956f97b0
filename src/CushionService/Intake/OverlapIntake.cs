using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
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
            findings.RefuseRange(field, "overlap-too-narrow", ClosureTexts.ButtonOverlap(overlap, button), button, across);
        }

        Length margin = body.Practice.TapeMargin,
            narrowest = HookAndLoopClosure.NarrowestOverlap(tape, margin);
        if (closure.Kind == ClosureKind.HookAndLoop && overlap < narrowest)
        {
            // Strips as high as the sides overlap by what the boxing's height leaves: a higher boxing overlaps by as much more.
            Message detail =
                closure.Strips == HookAndLoopStrips.AsSides
                    ? ClosureTexts.StripsAsSides(overlap, across, narrowest, margin, across + narrowest - overlap)
                    : ClosureTexts.TapeOverlap(overlap, narrowest, margin);
            findings.RefuseRange(field, "overlap-too-narrow", detail, narrowest, across);
        }
    }

    // Neither strip may reach past the other's seam, and each must show something beyond its hem.
    private static void LeavesStrips(string field, Length overlap, Length across, Length fold, Side side, Findings findings)
    {
        Length visible = OverlappingClosure.VisibleHeight(across, overlap);
        if (overlap > across || (overlap == across && side == Side.Bottom))
        {
            findings.RefuseRange(field, "overlap-too-deep", ClosureTexts.OverlapTooDeep(overlap, across), null, across);
        }
        else if (fold >= visible)
        {
            findings.RefuseRange(Fold.Name, "hem-too-deep", ClosureTexts.HemTooDeep(fold, visible), null, visible);
        }
        else if (2 * fold > visible)
        {
            findings.Warn(Fold.Name, "hem-eats-strip", ClosureTexts.HemEatsStrip(fold, visible));
        }
    }
}
