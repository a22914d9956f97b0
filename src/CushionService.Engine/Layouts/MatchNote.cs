using CushionService.Engine.Cutting;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Layouts;

/// <summary>Says of a piece that is to be matched where it is not, and why.</summary>
public static class MatchNote
{
    /// <summary>The note; null where the piece is matched in every way that is asked of it, or none is.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="fabric">Its fabric.</param>
    /// <param name="unit">The unit of lengths.</param>
    public static Violation? Of(CutPiece piece, FabricSpecification fabric, LengthUnit unit) =>
        fabric.Repeat is not null && Reason(piece, fabric, unit) is { } reason
            ? new Violation(piece.Pointer, "not-matched", $"Piece {piece.Name} {reason}")
            : null;

    private static string? Reason(CutPiece piece, FabricSpecification fabric, LengthUnit unit)
    {
        if (piece.Panel is not { } panel)
        {
            return null;
        }

        if (panel.Match is not null && MatchedAt.Of(fabric, piece) is not { IsEverywhere: true })
        {
            return Width(piece, fabric, unit);
        }

        return panel.MatchLimit switch
        {
            MatchLimit.Curve => "runs round a curve: it is matched at its middle alone.",
            MatchLimit.RunsOn => "runs round corners: it is matched on its longest side, and the pattern runs on from there.",
            MatchLimit.Upright when panel.Match is null => "carries the pattern upright; the face's does not run on over its edge.",
            MatchLimit.Upright => "carries the pattern upright, as the opposite side does, with a motif in line with the face's; "
                + "the face's pattern does not run on over its edge.",
            MatchLimit.Slant => "lies on a slanted edge, over which the pattern does not run on.",
            MatchLimit.Corners => "is matched in its middle; its corners and side seams cut across the pattern.",
            MatchLimit.Underside => "is matched on its top and front; on the underside the pattern runs on from there, upside down.",
            _ => null,
        };
    }

    private static string Width(CutPiece piece, FabricSpecification fabric, LengthUnit unit)
    {
        if (MatchedAt.Of(fabric, piece) is not { } at)
        {
            return $"cannot be matched to the repeat of {fabric.Name} within its width; it is laid where it fits.";
        }

        // As measured on the bolt, before the wash.
        string Text(Length laid) =>
            LengthText.Format(
                Length.FromNanometres(FabricSpecification.Kept(fabric.WidthShrinkage).Inverse().CeilingOf(laid.Nanometres)),
                unit
            );
        string where = at.From == at.To ? Text(at.From) : $"from {Text(at.From)} to {Text(at.To)}";
        return $"can be matched to the repeat of {fabric.Name} only where the centre of a motif is {where} "
            + "from the left edge of the usable width; elsewhere it is laid where it fits.";
    }
}
