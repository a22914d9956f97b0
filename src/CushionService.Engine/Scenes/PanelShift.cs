namespace CushionService.Engine.Scenes;

/// <summary>Finds where a part of a whole panel lies on it: parts have coordinates from their own lower left corners.</summary>
internal static class PanelShift
{
    // In millimetres: a part begins a nanometre or so beside the line that parts it.
    private const double Slack = 0.01;

    /// <summary>Of a part that covers a stretch across.</summary>
    /// <param name="whole">The whole panel.</param>
    /// <param name="from">Where the stretch starts.</param>
    /// <param name="to">Where it ends.</param>
    /// <returns>What to add to the part's coordinates, in millimetres.</returns>
    public static PlanePoint Across(IReadOnlyList<PlanePoint> whole, double from, double to) =>
        Lowest(PlanePolygon.Band(whole, new PlanePoint(1, 0), from + Slack, to - Slack)) with
        {
            X = from,
        };

    /// <summary>Of a part that covers a stretch along.</summary>
    /// <param name="whole">The whole panel.</param>
    /// <param name="from">Where the stretch starts.</param>
    /// <param name="to">Where it ends.</param>
    /// <returns>What to add to the part's coordinates, in millimetres.</returns>
    public static PlanePoint Along(IReadOnlyList<PlanePoint> whole, double from, double to) =>
        Lowest(PlanePolygon.Band(whole, new PlanePoint(0, 1), from + Slack, to - Slack)) with
        {
            Y = from,
        };

    private static PlanePoint Lowest(IReadOnlyList<PlanePoint> part) => PlanePolygon.Extent(part).Low;
}
