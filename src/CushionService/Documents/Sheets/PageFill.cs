namespace CushionService.Documents.Sheets;

/// <summary>Shares slabs out among pages: what keeps its next is never the last of a page.</summary>
internal static class PageFill
{
    /// <summary>The pages, each with its slabs and how far down they begin.</summary>
    /// <param name="slabs">The slabs, in order.</param>
    /// <param name="height">Of a page, in millimetres. What is higher has a page of its own, and runs over its end.</param>
    public static IReadOnlyList<IReadOnlyList<(Slab Slab, double At)>> Of(IReadOnlyList<Slab> slabs, double height)
    {
        List<IReadOnlyList<(Slab, double)>> pages = [];
        List<(Slab, double)> page = [];
        double used = 0;
        int i = 0;
        while (i < slabs.Count)
        {
            int end = i;
            double needed = slabs[i].Height;
            // A chain of slabs that each keep the next is moved to a new page as a whole.
            while (slabs[end].KeepsNext && end + 1 < slabs.Count)
            {
                end++;
                needed += slabs[end].Above + slabs[end].Height;
            }

            // A chain that no page can hold is broken where it must be.
            end = needed > height ? i : end;
            needed = end == i ? slabs[i].Height : needed;
            if (page.Count > 0 && used + slabs[i].Above + needed > height)
            {
                pages.Add(page);
                (page, used) = ([], 0);
                // A table that runs on has its head again; the head itself is not repeated above itself.
                if (slabs[i].Head is { } head && head != slabs[i])
                {
                    page.Add((head, 0));
                    used = head.Height;
                }
            }

            for (; i <= end; i++)
            {
                used += page.Count == 0 ? 0 : slabs[i].Above;
                page.Add((slabs[i], used));
                used += slabs[i].Height;
            }
        }

        if (page.Count > 0)
        {
            pages.Add(page);
        }

        return pages;
    }
}
