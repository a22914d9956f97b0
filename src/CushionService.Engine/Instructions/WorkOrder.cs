using System.Collections.Immutable;
using CushionService.Engine.Patterns.Panels;

namespace CushionService.Engine.Instructions;

/// <summary>Puts work in an order in which everything is done before it is needed.</summary>
/// <remarks>The same list always gives the same order. It takes time in the square of the number of works, of which a cover has a few
/// dozen.</remarks>
internal static class WorkOrder
{
    /// <summary>The work in order: of what can be done next, always what was listed first.</summary>
    /// <param name="works">The work on one cover, in any order.</param>
    /// <exception cref="InvalidPatternException">Two pieces of work wait for each other.</exception>
    public static ImmutableArray<Work> Of(IEnumerable<Work> works)
    {
        List<Work> left = [.. works];
        var ordered = ImmutableArray.CreateBuilder<Work>(left.Count);
        while (left.Count > 0)
        {
            // What a piece of work makes itself does not hold it up, nor does what no work of the list makes.
            HashSet<State> missing = [.. left.SelectMany(work => work.Makes)];
            int next = left.FindIndex(work => !work.Needs.Any(state => missing.Contains(state) && !work.Makes.Contains(state)));
            if (next < 0)
            {
                throw new InvalidPatternException(
                    $"Nothing can be done first of: {string.Join(" / ", left.Select(work => work.Text.Key))}."
                );
            }

            ordered.Add(left[next]);
            left.RemoveAt(next);
        }

        return ordered.DrainToImmutable();
    }
}
