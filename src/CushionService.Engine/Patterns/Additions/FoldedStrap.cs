using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Patterns.Additions;

/// <summary>A handle: a strip of fabric folded in four, cut four times as wide as it is finished and an end fold longer at each end; or
/// webbing, which is bought by length and leaves only its marks; or webbing within the strip.</summary>
/// <remarks>Common practice, no source.</remarks>
internal static class FoldedStrap
{
    // Both long edges are folded to the middle and the strip in half, so that no raw edge shows.
    private const int Layers = 4;

    /// <summary>Adds the strap, and the marks where its ends are sewn down on the panel that covers its side.</summary>
    /// <param name="pattern">The cover.</param>
    /// <param name="cushion">The cushion; nothing is added when it has no handle.</param>
    /// <param name="middleOf">The panel that covers a side, and where the side's middle lies on it.</param>
    public static Pattern AddTo(Pattern pattern, CushionSpecification cushion, Func<Pattern, Side, (PartName Part, Point Middle)?> middleOf)
    {
        if (cushion.Handle is not { } handle)
        {
            return pattern;
        }

        ImmutableArray<Panel> panels = pattern.Panels;
        foreach (Side side in handle.Sides)
        {
            (PartName part, Point middle) =
                middleOf(pattern, side) ?? throw new InvalidPatternException($"No single panel covers the {side} side for a handle.");
            Panel panel = panels.First(one => one.Part == part);
            Length start = middle.X - handle.Span.HalfUp();
            panels = panels.Replace(
                panel,
                panel with
                {
                    Marks = panel.Marks.Add(EndMark(handle, start, middle.Y)).Add(EndMark(handle, start + handle.Span, middle.Y)),
                }
            );
        }

        return pattern with
        {
            Panels = handle.HasStrap ? panels.Add(Strap(handle, cushion.Practice.Trims.HandleEndFold)) : panels,
        };
    }

    // In the middle of the side, as wide as the handle.
    private static PanelMark EndMark(HandleSpecification handle, Length x, Length middle)
    {
        Length low = middle - handle.Width.HalfUp();
        return new PanelMark(MarkKind.HandleEnd, new Point(x, low), new Point(x, low + handle.Width), MarkPurpose.SewHandleEnd);
    }

    // The folds need no allowance at the sides: the four layers are the whole width.
    private static Panel Strap(HandleSpecification handle, Length endFold)
    {
        Length width = Layers * handle.Width;
        var end = new EdgeFinish(FinishKind.TurnIn, 1, endFold);
        var side = new EdgeFinish(FinishKind.TurnIn, 0, Length.Zero);
        return new Panel
        {
            Part = new PartName(PartKind.Handle),
            Role = FabricRole.Handle,
            Layers = Layers,
            Copies = handle.Sides.Length,
            Edges = PanelOutline.Rectangle(width, handle.Length, end, side, end, side),
            Marks = [.. Enumerable.Range(1, Layers - 1).Select(quarter => Fold(quarter * handle.Width, handle.Length))],
        };
    }

    private static PanelMark Fold(Length x, Length length) =>
        new(MarkKind.FoldLine, new Point(x, Length.Zero), new Point(x, length), MarkPurpose.FoldInFour);
}
