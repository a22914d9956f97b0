using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Intake;

/// <summary>Checks two hemmed strips or flaps that overlap against what they lie across, and specifies them.</summary>
/// <remarks>Across a height H two strips that overlap by o each show (H + o)/2. Finished sizes are on the seam line; the fold is the
/// depth of a hem that is folded twice.</remarks>
internal static class OverlapIntake
{
    private static readonly LengthField<Closure> Fold = RecordForm<Closure>.Length(nameof(Closure.Fold)),
        Overlap = RecordForm<Closure>.Length(nameof(Closure.Overlap)),
        TapeWidth = RecordForm<Closure>.Length(nameof(Closure.TapeWidth)),
        ButtonDiameter = RecordForm<Closure>.Length(nameof(Closure.ButtonDiameter)),
        TieLength = RecordForm<Closure>.Length(nameof(Closure.TieLength));

    /// <summary>The closure; null where one of its lengths was refused.</summary>
    /// <param name="closure">The closure as written.</param>
    /// <param name="fields">Its fields.</param>
    /// <param name="side">The side that it is on.</param>
    /// <param name="body">The cushion, the closure's return read.</param>
    /// <param name="findings">Takes what is wrong with the closure.</param>
    public static OverlappingClosure? Read(Closure closure, Fields<Closure> fields, Side side, CushionBody body, Findings findings)
    {
        // What the strips lie across: the underside's depth or its width, the boxing's height, or a cover without thickness all round.
        Length? across =
            side == Side.Bottom ? (body.FlapsSideways ? body.Outline?.Width : body.Outline?.Depth)
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

        // The finding is at the field that the order gave: a shortcut has no overlap of its own.
        if (across is { } height)
        {
            string field = asSides ? nameof(closure.Strips) : nameof(closure.Overlap);
            HoldsFastening(closure, field, overlap, height, tape, button, body, findings);
            LeavesStrips(field, overlap, height, fold, side, findings);
        }

        // A hole runs along the opening, clear of the seams at its ends.
        Length? run =
            side == Side.Bottom ? (body.FlapsSideways ? body.Outline?.Depth : body.Outline?.Width)
            : body.Offer.Kind == Construction.Bolster ? null
            : body.SideLength(side) + 2 * turn;
        if (closure.Kind == ClosureKind.Buttons && run is { Nanometres: > 0 } opening && usual.RoomForButton(button) > opening)
        {
            findings.Refuse(
                ButtonDiameter.Name,
                "out-of-range",
                ClosureTexts.ButtonholeTooLong(usual.Buttonhole(button), usual.RoomForButton(button), opening)
            );
        }

        // Each with the size of its fastening; an envelope has none, and no returns.
        return closure.Kind switch
        {
            ClosureKind.HookAndLoop => new HookAndLoopClosure(side, turn, fold, overlap, tape),
            ClosureKind.Buttons => new ButtonClosure(side, turn, fold, overlap, button),
            ClosureKind.Ties => new TieClosure(side, turn, fold, overlap, tie),
            _ => new EnvelopeClosure(side, fold, overlap) { Sideways = body.FlapsSideways },
        };
    }

    // The overlap where the order gives none: what the fastening needs, or for an envelope a share of what it lies across. Strips cut as
    // high as the sides overlap by what their hems leave.
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

    // A button needs its diameter, a tape its width and a margin at each edge.
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
        // Beyond its hem a strip must show at least something, or there is nothing to fold.
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
