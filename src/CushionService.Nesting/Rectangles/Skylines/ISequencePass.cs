using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Skylines;

/// <summary>Turns a sequence of copies into a layout, each copy as low as the pass knows how: on a skyline where nothing forbids a
/// position, or in free rectangles where a repeat or flaws do. A search over sequences calls it once for each try.</summary>
internal interface ISequencePass
{
    /// <summary>Where the copies lie after a pass that laid all of them.</summary>
    RectangleLayout Layout { get; }

    /// <summary>Length used by the last pass, in grid units.</summary>
    long Length { get; }

    /// <summary>Lays what fits up to a length, but stops once more area than <paramref name="most"/> must stay out.</summary>
    /// <param name="order">The copies, those to be considered first in front.</param>
    /// <param name="limit">The length, in grid units; <see cref="Skyline.Wall"/> for no limit.</param>
    /// <param name="most">Area that may stay out.</param>
    /// <param name="budget">Pays for the steps.</param>
    /// <returns>The area that stayed out, or <see cref="long.MaxValue"/> when it was more.</returns>
    long Lay(int[] order, long limit, long most, StepBudget budget);
}
