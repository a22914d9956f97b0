using System.Collections.Immutable;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Fitting;

/// <summary>Cuts from one piece on hand what was laid for fabric that is bought: whoever cut the length that was named is not told to buy
/// more.</summary>
public static class BoughtLayout
{
    /// <summary>Whether a piece on hand keeps the fabric's whole width, so that what is laid on the bolt may lie on it.</summary>
    /// <param name="fabric">A fabric with offcuts.</param>
    public static bool MayHold(FabricSpecification fabric) => OffcutRoom.Of(fabric, isMatched: false).Any(room => IsAsWide(room, fabric));

    /// <summary>Puts a layout on the smallest piece on hand that holds it.</summary>
    /// <param name="fabric">A fabric with offcuts.</param>
    /// <param name="layout">What was laid for fabric that is bought.</param>
    /// <returns>Null where no one piece holds it, or the layout counts on where the motif is along, which is not known of a piece on
    /// hand.</returns>
    public static OffcutFit? On(FabricSpecification fabric, FabricLayout layout)
    {
        ArgumentNullException.ThrowIfNull(layout);
        ImmutableArray<OffcutRoom> rooms = OffcutRoom.Of(fabric, layout.Placements.Any(laid => laid.IsMatched));
        OffcutRoom? room = rooms.Where(one => IsAsWide(one, fabric) && one.Length >= layout.Length).MinBy(one => one.Area.SquareNanometres);
        bool countsOnMotif = fabric.Repeat is { MotifY: not null } && layout.Placements.Any(laid => laid.IsMatched);
        return room is null || countsOnMotif
            ? null
            : new OffcutFit(
                fabric,
                FitVerdict.Fits,
                [.. rooms.Select(one => new OffcutLayout(one, ReferenceEquals(one, room) ? layout.Placements : []))],
                []
            );
    }

    private static bool IsAsWide(OffcutRoom room, FabricSpecification fabric) =>
        room.Outline.IsEmpty && room.Width >= fabric.UsableWidth && room.Length > Length.Zero;
}
