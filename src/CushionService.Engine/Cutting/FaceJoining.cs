using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns;

namespace CushionService.Engine.Cutting;

/// <summary>Where a face that is wider than its cloth is joined: a whole breadth in the middle and a panel at each side, so that no join
/// meets the front's centre.</summary>
/// <remarks>Common practice, no source; a side panel is not made narrower than a sixth of the breadth where the face leaves it more.</remarks>
public static class FaceJoining
{
    /// <summary>The joins, from the left edge.</summary>
    /// <param name="face">A rectangular face, wider than the cloth takes.</param>
    /// <param name="usable">How wide a panel may be cut.</param>
    /// <param name="seam">Seam allowance of the joins.</param>
    /// <returns>None where the cloth has no breadth beside its allowances.</returns>
    public static ImmutableArray<Length> Joins(Panel face, Length usable, Length seam)
    {
        Length most = usable - 2 * seam, width = face.Width;
        if (most <= 2 * seam)
        {
            return [];
        }

        // An odd number of panels keeps the centre whole.
        long breadths = (width.Nanometres + most.Nanometres - 1) / most.Nanometres;
        breadths += breadths % 2 == 0 ? 1 : 0;
        if (breadths < 3)
        {
            return [];
        }

        Length narrowest = Length.Min(Length.FromNanometres(most.Nanometres / 6), Length.FromNanometres(width.Nanometres / breadths));
        Length inner = Length.Min(most, Length.FromNanometres((width - 2 * narrowest).Nanometres / (breadths - 2)));
        Length side = Length.FromNanometres((width - (breadths - 2) * inner).Nanometres / 2);
        return [.. Enumerable.Range(0, (int)breadths - 1).Select(i => side + i * inner)];
    }
}
