using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Skylines;

/// <summary>Begins a search over orders on a skyline.</summary>
internal static class SkylineSearch
{
    // Above this many copies a move costs more than it finds, so that only the end of the order is searched.
    private const int MostInOrder = 400;

    // The end of a very large order that is searched.
    private const int LeftToOrder = 500;

    // The smallest copies are kept for the end, where they fill what is left.
    private const int KeptBack = 70;

    /// <summary>A search over all copies, or over the end of a very large order: of that, nearly nothing is lost while there is much to
    /// choose from.</summary>
    /// <param name="set">All copies.</param>
    /// <param name="sale">The lengths that can be bought.</param>
    /// <param name="budget">Pays for the steps.</param>
    public static SequenceSearch Start(RectangleSet set, SaleLadder sale, StepBudget budget)
    {
        if (set.Copies <= MostInOrder)
        {
            int[] all = [.. Enumerable.Range(0, set.Copies)];
            return new SequenceSearch(set, all, set.KindOf, new SkylinePass(set, set.Width, set.Copies), sale, budget);
        }

        var skyline = new Skyline(set.Width, set.Copies);
        var bulk = new BulkPass(set);
        var layout = new RectangleLayout(set);
        long lost = bulk.Run(skyline, LeftToOrder, KeptBack, layout, budget);
        int[] left = bulk.Left;
        var pass = new SkylinePass(set, set.Width, left.Length + skyline.Segments());
        pass.Layout.CopyFrom(layout);
        pass.StartFrom(skyline, lost);
        return new SequenceSearch(set, left, set.KindOf, pass, sale, budget);
    }
}
