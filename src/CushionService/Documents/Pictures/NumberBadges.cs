using System.Globalization;
using CushionService.Documents.Drawings;

namespace CushionService.Documents.Pictures;

/// <summary>Numbers in circles on the pieces of a picture. Where two would cover each other, the later one goes to the nearest free place,
/// with a line to its piece.</summary>
internal static class NumberBadges
{
    private const double Radius = 15;

    // Between the middles of two, and how far the places are tried: rings about the piece's middle, of twelve places each.
    private const double Apart = 2.2 * Radius;
    private const double RingStep = 0.8 * Radius;
    private const int Rings = 14;
    private const int Places = 12;

    /// <summary>Draws the numbers.</summary>
    /// <param name="shapes">Takes the shapes.</param>
    /// <param name="pieces">The number of each piece and a point on it, in units of the picture.</param>
    /// <param name="type">The height of the type.</param>
    public static void Draw(List<Shape> shapes, IReadOnlyList<(int Number, Spot Middle)> pieces, double type)
    {
        List<Spot> taken = [];
        foreach ((_, Spot middle) in pieces)
        {
            taken.Add(Free(middle, taken));
        }

        // Lines first, so that none crosses a number.
        for (int i = 0; i < pieces.Count; i++)
        {
            if ((taken[i] - pieces[i].Middle).Size > Radius)
            {
                shapes.Add(new Shape([pieces[i].Middle, taken[i]], false, new Ink(null, 1, Tint.Line, 1.6)));
            }
        }

        for (int i = 0; i < pieces.Count; i++)
        {
            shapes.Add(Disc(taken[i]));
            shapes.Add(
                new Shape([taken[i] + new Spot(0, 0.36 * type)], true, new Ink(Tint.Line, 1, null, type))
                {
                    Text = pieces[i].Number.ToString(CultureInfo.InvariantCulture),
                }
            );
        }
    }

    /// <summary>The place nearest to a point where a number covers none of those taken; the point itself where all are taken.</summary>
    public static Spot Free(Spot wanted, IReadOnlyList<Spot> taken) =>
        Enumerable
            .Range(0, Rings * Places)
            .Select(i => wanted + RingStep * (i / Places) * Way(i % Places))
            .Where(place => taken.All(other => (other - place).Size >= Apart))
            .DefaultIfEmpty(wanted)
            .First();

    private static Spot Way(int place) => new(Math.Cos(place * 2 * Math.PI / Places), Math.Sin(place * 2 * Math.PI / Places));

    private static Shape Disc(Spot at) =>
        new(
            [.. Enumerable.Range(0, 16).Select(i => at + Radius * new Spot(Math.Cos(i * Math.PI / 8), Math.Sin(i * Math.PI / 8)))],
            true,
            new Ink(Tint.Light, 1, Tint.Line, 1.6)
        );
}
