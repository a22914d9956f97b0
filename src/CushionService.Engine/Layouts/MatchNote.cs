using CushionService.Engine.Cutting;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Layouts;

/// <summary>Says of a piece that is to be matched where it is not, and why.</summary>
public static class MatchNote
{
    private static readonly string TooWide = MatchTexts.TooWide(default, "").Key;

    /// <summary>The note; null where the piece is matched in every way that is asked of it, or none is.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="fabric">Its fabric.</param>
    public static Violation? Of(CutPiece piece, FabricSpecification fabric) =>
        fabric.Repeat is not null && Reason(piece, fabric) is { } reason ? new Violation(piece.Pointer, "not-matched", reason) : null;

    /// <summary>Whether a note says that a piece is too wide to find its motif, so that it lies where it fits.</summary>
    /// <param name="note">Any warning.</param>
    public static bool IsTooWide(Violation note)
    {
        ArgumentNullException.ThrowIfNull(note);
        return note.Detail.Key == TooWide;
    }

    private static Message? Reason(CutPiece piece, FabricSpecification fabric)
    {
        if (piece.Panel is not { } panel)
        {
            return null;
        }

        if (panel.Match is not null && MatchedAt.Of(fabric, piece) is not { IsEverywhere: true })
        {
            return Width(piece, fabric);
        }

        return panel.MatchLimit switch
        {
            MatchLimit.Curve => MatchTexts.AtMiddle(piece.Name),
            MatchLimit.RunsOn => MatchTexts.RunsOn(piece.Name),
            MatchLimit.Continues => MatchTexts.Continues(piece.Name),
            MatchLimit.Upright when panel.Match is null => MatchTexts.Upright(piece.Name),
            MatchLimit.Upright => MatchTexts.UprightInLine(piece.Name),
            MatchLimit.Slant => MatchTexts.Slant(piece.Name),
            MatchLimit.Corners => MatchTexts.Corners(piece.Name),
            MatchLimit.Underside => MatchTexts.Underside(piece.Name),
            _ => null,
        };
    }

    private static Message Width(CutPiece piece, FabricSpecification fabric)
    {
        if (MatchedAt.Of(fabric, piece) is not { } at)
        {
            return MatchTexts.TooWide(piece.Name, fabric.Name);
        }

        // As measured on the bolt, before the wash.
        Length Bought(Length laid) =>
            Length.FromNanometres(FabricSpecification.Kept(fabric.WidthShrinkage).Inverse().CeilingOf(laid.Nanometres));
        return at.From == at.To
            ? MatchTexts.AtPosition(piece.Name, fabric.Name, Bought(at.From))
            : MatchTexts.AtPositions(piece.Name, fabric.Name, Bought(at.From), Bought(at.To));
    }
}
