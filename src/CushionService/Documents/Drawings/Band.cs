using CushionService.Contract.Answers;

namespace CushionService.Documents.Drawings;

/// <summary>A part of a layout between two cross lines.</summary>
/// <param name="From">Along the fabric.</param>
/// <param name="To">Along the fabric.</param>
internal readonly record struct Band(double From, double To)
{
    /// <summary>The whole layout as one band.</summary>
    /// <param name="layout">The layout.</param>
    public static Band Whole(LayoutAnswer layout) => new(0, layout.Length);

    /// <summary>Cuts a layout into bands of at most <paramref name="longest"/>, where the fewest pieces are cut through.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="longest">Along the fabric, in the answer's units, above 0.</param>
    /// <returns>In order; each band but the last is more than half as long as the longest.</returns>
    public static IReadOnlyList<Band> Of(LayoutAnswer layout, double longest)
    {
        List<Band> bands = [];
        double from = 0;
        while (layout.Length - from > longest)
        {
            double to = BestCut(layout, from + longest / 2, from + longest);
            bands.Add(new Band(from, to));
            from = to;
        }

        bands.Add(new Band(from, layout.Length));
        return bands;
    }

    /// <summary>Whether any of a placement shows in the band.</summary>
    /// <param name="placement">One that only touches the band's edge does not show in it.</param>
    public bool Shows(PlacementAnswer placement) => placement.Y < To && placement.Y + placement.Length > From;

    // A cut at the far end of a piece goes through fewest others; of equals the later, so that there are few bands.
    private static double BestCut(LayoutAnswer layout, double low, double high)
    {
        (double best, int fewest) = (high, Crossings(layout, high));
        foreach (PlacementAnswer placement in layout.Placements)
        {
            double cut = placement.Y + placement.Length;
            if (cut <= low || cut > high)
            {
                continue;
            }

            int crossings = Crossings(layout, cut);
            if (crossings < fewest || (crossings == fewest && cut > best))
            {
                (best, fewest) = (cut, crossings);
            }
        }

        return best;
    }

    private static int Crossings(LayoutAnswer layout, double cut)
    {
        int count = 0;
        foreach (PlacementAnswer placement in layout.Placements)
        {
            count += placement.Y < cut && placement.Y + placement.Length > cut ? 1 : 0;
        }

        return count;
    }
}
