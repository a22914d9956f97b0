namespace CushionService.Benchmarks.Nesting;

/// <summary>One instance of the open data.</summary>
internal sealed record OpenInstance(
    string Name,
    long StripWidth,
    long? Optimal,
    string? OptimalFor,
    long? BestKnown,
    long LowerBound,
    IReadOnlyList<OpenItem> Items
)
{
    /// <summary>The number of rectangles.</summary>
    public int Rectangles => Items.Sum(item => item.N);
}

/// <summary>A rectangle of an instance, and how many of it.</summary>
internal sealed record OpenItem(long W, long H, int N);
