using System.Collections.Immutable;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Intake;

/// <summary>Checks what is added to a cushion, and specifies it.</summary>
/// <remarks>Which additions a construction takes is in its offer; each is checked against the closure, the handle and the others, since
/// two of them cannot be on the same side.</remarks>
internal static class TrimIntake
{
    // Where vents are looked for a side, first to last: where they show least (common practice, no source).
    private static readonly ImmutableArray<Side> VentSides = [Side.Back, Side.Left, Side.Right, Side.Front];

    /// <summary>The additions; what was refused is left out.</summary>
    /// <param name="cushion">The cushion as written.</param>
    /// <param name="body">What has been read of it, its closure included.</param>
    /// <param name="findings">Takes what is wrong with the cushion.</param>
    public static TrimSpecification Read(Cushion cushion, CushionBody body, Findings findings)
    {
        EdgingSpecification? edging = cushion.Edging is { } edge
            ? EdgingIntake.Read(edge, body, findings.Within(nameof(cushion.Edging)))
            : null;
        TieSpecification? ties =
            cushion.Ties is { } tied && Applies(AdditionKind.Ties, nameof(cushion.Ties), body)
                ? StrapIntake.ReadTies(tied, body, findings.Within(nameof(cushion.Ties)))
                : null;
        StrapSpecification? straps =
            cushion.Straps is { } strapped && Applies(AdditionKind.Straps, nameof(cushion.Straps), body)
                ? StrapIntake.ReadStraps(strapped, body, findings.Within(nameof(cushion.Straps)))
                : null;
        TuftSpecification? tufts =
            cushion.Tufts is { } tufted && Applies(AdditionKind.Tufts, nameof(cushion.Tufts), body)
                ? TuftIntake.Read(tufted, body, findings.Within(nameof(cushion.Tufts)))
                : null;
        PocketSpecification? pocket =
            cushion.Pocket is { } patch && Applies(AdditionKind.Pocket, nameof(cushion.Pocket), body)
                ? PocketIntake.Read(patch, body, findings.Within(nameof(cushion.Pocket)))
                : null;
        // The base and the vents depend on the closure, and the vents on the handle and the pocket too.
        Base(cushion, body);
        // What the construction does not take has been reported, and is left out like what was refused.
        return new TrimSpecification
        {
            Edging = edging,
            Ties = ties,
            Straps = straps,
            Tufts = tufts,
            Pocket = pocket,
            Base = cushion.Base ?? BaseKind.Plain,
            Vents = cushion.Vents ?? 0,
            VentSide = Vented(cushion, body),
            FaceJoins = cushion.FaceJoins ?? FaceJoins.Refuse,
        };
    }

    // Whether the construction takes an addition; reports one that it does not take.
    private static bool Applies(AdditionKind kind, string field, CushionBody body)
    {
        if (body.Offer.Additions.Contains(kind))
        {
            return true;
        }

        body.At.NotApplicable(field, FieldTexts.NotForConstruction(FieldNames.Words(field), body.Offer.Kind));
        return false;
    }

    // An anti-slip base is the whole underside, so that no closure can be in it.
    private static void Base(Cushion cushion, CushionBody body)
    {
        if (cushion.Base == BaseKind.AntiSlip && Applies(AdditionKind.Base, nameof(cushion.Base), body) && body.ClosureSide == Side.Bottom)
        {
            body.At.Refuse(nameof(cushion.Base), "not-combinable", TrimTexts.BaseOverClosure);
        }
    }

    // The side of the boxing that the vents are set into; the back where there are none, or no side is free.
    private static Side Vented(Cushion cushion, CushionBody body)
    {
        if (!(cushion.Vents > 0) || !Applies(AdditionKind.Vents, nameof(cushion.Vents), body))
        {
            return Side.Back;
        }

        foreach (Side side in VentSides)
        {
            // The closure, the handle and the pocket each take a whole side.
            bool free =
                !body.IsOpenOn(side)
                && !(cushion.Handle is not null && body.HandleSides.Contains(side))
                && !(cushion.Pocket is { } pocket && side == PocketIntake.SideOf(pocket));
            if (free && body.Outline?.Sides.Any(stretch => stretch.Side == side) == true)
            {
                VentsFit(cushion.Vents.Value, side, body);
                return side;
            }
        }

        // Without an outline no side is known; that has been reported.
        if (body.Outline is not null)
        {
            body.At.Refuse(nameof(cushion.Vents), "not-combinable", TrimTexts.NoSideForVents);
        }

        return Side.Back;
    }

    // Vents divide their side evenly, its ends included.
    private static void VentsFit(int vents, Side side, CushionBody body)
    {
        Length least = body.Practice.Trims.VentSpacing;
        if (body.SideLength(side) is { } length && (vents + 1) * least > length)
        {
            body.At.Refuse(nameof(Cushion.Vents), "side-too-short", TrimTexts.VentsSideBySide(length, vents, least));
        }
    }
}
