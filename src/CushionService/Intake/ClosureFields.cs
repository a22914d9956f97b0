using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Intake;

/// <summary>Which fields each closure takes.</summary>
/// <remarks>A field of another closure would have no effect; a caller that sends one means something else than it gets.</remarks>
internal static class ClosureFields
{
    /// <summary>Reports each field that means nothing to a closure of this kind, or to this one on this cushion.</summary>
    /// <param name="closure">The closure as written.</param>
    /// <param name="kind">Its kind.</param>
    /// <param name="body">The cushion.</param>
    /// <param name="findings">Takes what is wrong with the closure.</param>
    public static void Check(Closure closure, ClosureKind kind, CushionBody body, Findings findings)
    {
        // Two hemmed strips or flaps; an envelope has nothing to fasten them.
        bool overlaps = kind is ClosureKind.HookAndLoop or ClosureKind.Envelope or ClosureKind.Buttons or ClosureKind.Ties;
        bool zipper = kind == ClosureKind.Zipper,
            hooked = kind == ClosureKind.HookAndLoop;
        // Returns run on round the corners of a boxing that joins at the back.
        Only(body.HasReturns, closure.Return is not null, nameof(closure.Return));
        // A zipper in a seam takes the seam's own allowance, unless a lap hides it.
        Only(zipper && (!body.ZipsSeam || closure.Lap is not null), closure.TurnUnder is not null, nameof(closure.TurnUnder));
        Only(zipper, closure.Lap is not null, nameof(closure.Lap));
        Only(zipper && body.Offer.ZipsThreeSides && body.ClosureSide != Side.Bottom, closure.Extent is not null, nameof(closure.Extent));
        Only(kind == ClosureKind.Envelope && body.Offer.FlapsEitherWay, closure.Flaps is not null, nameof(closure.Flaps));
        Only(zipper, closure.ZipperSize is not null, nameof(closure.ZipperSize));
        Only(zipper, closure.Sliders is not null, nameof(closure.Sliders));
        Only(zipper, closure.ZipperColour is not null, nameof(closure.ZipperColour));
        Only(overlaps, closure.Fold is not null, nameof(closure.Fold));
        Only(overlaps && !(hooked && closure.Strips == HookAndLoopStrips.AsSides), closure.Overlap is not null, nameof(closure.Overlap));
        Only(hooked, closure.TapeWidth is not null, nameof(closure.TapeWidth));
        Only(kind == ClosureKind.Buttons, closure.ButtonDiameter is not null, nameof(closure.ButtonDiameter));
        Only(kind == ClosureKind.Ties, closure.TieLength is not null, nameof(closure.TieLength));
        // Strips as high as the sides are a shortcut for a boxing; the underside has none.
        Only(hooked && body.Offer.Thickness && body.ClosureSide != Side.Bottom, closure.Strips is not null, nameof(closure.Strips));

        void Only(bool applies, bool given, string field)
        {
            if (given && !applies)
            {
                findings.NotApplicable(field, FieldTexts.NotForClosure(FieldNames.Words(field), kind));
            }
        }
    }
}
