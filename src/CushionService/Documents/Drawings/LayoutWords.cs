using CushionService.Engine.Messages;

namespace CushionService.Documents.Drawings;

/// <summary>What a drawing of a layout says in words.</summary>
internal static class LayoutWords
{
    /// <summary>The fabric, how long it lies, and how much of it is bought where that is known.</summary>
    /// <param name="scene">What is drawn.</param>
    public static Message Title(LayoutScene scene)
    {
        var units = new OrderUnits(scene.Units, scene.Language);
        return DrawingTexts.LaidOut(
            scene.Layout.Label ?? scene.Layout.Fabric,
            units.Text(scene.Layout.Length),
            scene.Yardage is { } line ? units.Sale(line.SoldLength, line.SoldUnit) : null
        );
    }

    /// <summary>The usable width and the share that the pieces cover; of a part, also from where to where it
    /// goes.</summary>
    /// <param name="scene">What is drawn.</param>
    /// <param name="band">The part that is drawn.</param>
    public static Message Facts(LayoutScene scene, Band band)
    {
        var units = new OrderUnits(scene.Units, scene.Language);
        bool whole = band == Band.Whole(scene.Layout);
        return DrawingTexts.WidthUsed(
            units.Text(scene.Layout.Width),
            decimal.Round((decimal)(100 * scene.Layout.Used), 1),
            whole ? null : units.Number(band.From),
            units.Text(band.To)
        );
    }

    /// <summary>The drawing for those who do not see it: sizes, and how many of which piece.</summary>
    /// <param name="scene">What is drawn.</param>
    /// <param name="placed">The placements that show in it.</param>
    public static Message Description(LayoutScene scene, IReadOnlyList<PlacedPiece> placed) =>
        DrawingTexts.Shown(
            Title(scene),
            new OrderUnits(scene.Units, scene.Language).Text(scene.Layout.Width),
            [
                .. placed
                    .GroupBy(piece => piece.Piece.Id, StringComparer.Ordinal)
                    .Select(copies => DrawingTexts.CountOf(copies.Count(), copies.First().Piece.Label ?? copies.Key)),
            ]
        );
}
