using System.Collections.Immutable;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Intake;

/// <summary>Checks what is added to a cushion, and specifies it.</summary>
internal static class TrimIntake
{
    private static readonly ImmutableArray<Side> VentSides = [Side.Back, Side.Left, Side.Right, Side.Front];

    /// <summary>The additions; what was refused is left out.</summary>
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
        Base(cushion, body);
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

    private static bool Applies(AdditionKind kind, string field, CushionBody body)
    {
        if (body.Offer.Additions.Contains(kind))
        {
            return true;
        }

        body.At.NotApplicable(field, FieldTexts.NotForConstruction(FieldNames.Words(field), body.Offer.Kind));
        return false;
    }

    private static void Base(Cushion cushion, CushionBody body)
    {
        if (cushion.Base == BaseKind.AntiSlip && Applies(AdditionKind.Base, nameof(cushion.Base), body) && body.ClosureSide == Side.Bottom)
        {
            body.At.Refuse(nameof(cushion.Base), "not-combinable", TrimTexts.BaseOverClosure);
        }
    }

    private static Side Vented(Cushion cushion, CushionBody body)
    {
        if (!(cushion.Vents > 0) || !Applies(AdditionKind.Vents, nameof(cushion.Vents), body))
        {
            return Side.Back;
        }

        foreach (Side side in VentSides)
        {
            bool free =
                !(body.OpensBoxing && side == body.ClosureSide)
                && !(cushion.Handle is not null && side == body.HandleSide)
                && !(cushion.Pocket is { } pocket && side == PocketIntake.SideOf(pocket));
            if (free && body.Outline?.Sides.Any(stretch => stretch.Side == side) == true)
            {
                return side;
            }
        }

        if (body.Outline is not null)
        {
            body.At.Refuse(nameof(cushion.Vents), "not-combinable", TrimTexts.NoSideForVents);
        }

        return Side.Back;
    }
}
