using CushionService.Nesting;
using CushionService.Nesting.Solving;

namespace CushionService.Engine.Layouts;

/// <summary>How hard something is searched that is laid beside an order's fabric: foam, batting, or a comparison.</summary>
/// <param name="Effort">How hard to search at most.</param>
/// <param name="Most">What one such search may cost (see <see cref="SearchCost"/>), at least 1.</param>
/// <param name="Cancellation">Cancels the search.</param>
public readonly record struct SideSearch(Effort Effort, long Most, CancellationToken Cancellation)
{
    /// <summary>A search that shares its effort with no other.</summary>
    /// <param name="effort">How hard to search.</param>
    /// <param name="cancellation">Cancels the search.</param>
    public static SideSearch Alone(Effort effort, CancellationToken cancellation) => new(effort, SearchCost.Most(effort), cancellation);

    /// <summary>By how many searches the effort's steps must be shared.</summary>
    /// <param name="copies">How many copies are laid.</param>
    /// <param name="outlines">Whether any is an outline.</param>
    /// <param name="least">What they are shared by in any case, at least 1.</param>
    public int SharedBy(int copies, bool outlines, int least = 1) =>
        least * SearchCost.SharedBy(SearchCost.Of(Effort, copies, outlines) / least, Most);
}
