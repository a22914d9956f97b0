using CushionService.Contract.Answers;

namespace CushionService.Documents.Drawings;

/// <summary>How large a layout is drawn on the page, and which way round.</summary>
/// <param name="Turned">Whether the bolt runs to the right: long layouts.</param>
/// <param name="Mm">User units in a millimetre of the nominal print.</param>
internal sealed record LayoutScale(bool Turned, double Mm)
{
    /// <summary>Width of a drawing, in millimetres: what A4 and Letter both hold between margins of 12 mm.</summary>
    public const double PageWidth = 186;

    // In millimetres of the nominal print: the width of upright fabric and how long it may be, the length of a turned
    // band, and the width of turned fabric from the least to the most.
    private const double UprightFabric = 156;
    private const double TallestUpright = 175;
    private const double TurnedRun = 170;
    private const double NarrowestTurned = 72;
    private const double WidestTurned = 105;

    /// <summary>The scale of a layout: upright where it is about as long as it is wide, else turned.</summary>
    /// <param name="layout">A layout with a length above 0.</param>
    public static LayoutScale For(LayoutAnswer layout)
    {
        if (layout.Length * UprightFabric <= TallestUpright * layout.Width)
        {
            return new LayoutScale(false, layout.Width / UprightFabric);
        }

        double fitted = TurnedRun / layout.Length * layout.Width;
        return new LayoutScale(true, layout.Width / Math.Clamp(fitted, NarrowestTurned, WidestTurned));
    }

    /// <summary>The bands in which a layout is printed page by page.</summary>
    /// <param name="layout">The layout that the scale was made for.</param>
    public IReadOnlyList<Band> Bands(LayoutAnswer layout) => Turned ? Band.Of(layout, TurnedRun * Mm * (1 + 1e-9)) : [Band.Whole(layout)];
}
