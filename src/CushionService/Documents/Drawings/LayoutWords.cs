using System.Globalization;

namespace CushionService.Documents.Drawings;

/// <summary>What a drawing of a layout says in words.</summary>
internal static class LayoutWords
{
    public static string Title(LayoutScene scene)
    {
        string title = $"{scene.Layout.Label ?? scene.Layout.Fabric}: {new OrderUnits(scene.Units).Text(scene.Layout.Length)} laid out";
        return scene.Yardage is { } line ? $"{title}, buy {SaleText.Of(line.SoldLength, line.SoldUnit)}" : title;
    }

    public static string Facts(LayoutScene scene, Band band)
    {
        var units = new OrderUnits(scene.Units);
        string used = (100 * scene.Layout.Used).ToString("0.#", CultureInfo.InvariantCulture);
        string facts = $"{units.Text(scene.Layout.Width)} of usable width, {used} % used";
        return band == Band.Whole(scene.Layout) ? facts : $"{facts}; this part from {units.Number(band.From)} to {units.Text(band.To)}";
    }

    /// <summary>The drawing for those who do not see it: sizes, and how many of which piece.</summary>
    public static string Description(LayoutScene scene, IReadOnlyList<PlacedPiece> placed)
    {
        var units = new OrderUnits(scene.Units);
        IEnumerable<string> counts = placed
            .GroupBy(piece => piece.Piece.Id, StringComparer.Ordinal)
            .Select(copies => $"{copies.Count().ToString(CultureInfo.InvariantCulture)} of {copies.Key}");
        return $"{Title(scene)}; {units.Text(scene.Layout.Width)} of usable width. Pieces shown: {string.Join(", ", counts)}.";
    }
}
