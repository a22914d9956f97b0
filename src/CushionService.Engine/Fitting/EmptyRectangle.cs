using System.Collections.Immutable;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Fitting;

/// <summary>A rectangle of an offcut on which nothing lies.</summary>
/// <param name="X">From the left edge of the usable width.</param>
/// <param name="Y">From the start of the offcut.</param>
/// <param name="Width">Across.</param>
/// <param name="Length">Along.</param>
public readonly record struct EmptyRectangle(Length X, Length Y, Length Width, Length Length)
{
    // The five largest are reported; what is smaller is rarely kept (common practice, no source).
    private const int Most = 5;

    // Less than about an inch either way is swept up, not kept (common practice, no source).
    private static readonly Length Least = Length.FromMillimetres(25);

    // The largest remnant is the most useful one, so area decides which is taken first.
    private Area Area => Area.Of(Width, Length);

    /// <summary>Takes the largest empty rectangle, then the largest of what is left beside it, and so on.</summary>
    /// <remarks>The maximal empty rectangles are kept as a list; each piece laid splits those that it touches into at most four (the
    /// maximal rectangles of Jylänki 2010). A piece that is no rectangle counts as its bounding box.</remarks>
    /// <param name="room">The offcut; an empty one leaves nothing.</param>
    /// <param name="laid">What lies on it.</param>
    /// <returns>The largest first, then from the start and from the left where areas are equal.</returns>
    public static ImmutableArray<EmptyRectangle> Largest(OffcutRoom room, IEnumerable<LaidPiece> laid)
    {
        // Of a hide the rest is no rectangle, and what a box round it would leave is not all there.
        List<EmptyRectangle> empty = room.IsEmpty || !room.Outline.IsEmpty ? [] : [new(Length.Zero, Length.Zero, room.Width, room.Length)];
        foreach (LaidPiece piece in laid)
        {
            empty = Without(empty, new(piece.X, piece.Y, piece.Width, piece.Length));
        }

        var largest = ImmutableArray.CreateBuilder<EmptyRectangle>();
        while (empty.Count > 0 && largest.Count < Most)
        {
            EmptyRectangle next = empty
                .OrderByDescending(one => one.Area.SquareNanometres)
                .ThenBy(one => one.Y)
                .ThenBy(one => one.X)
                .First();
            largest.Add(next);
            empty = Without(empty, next);
        }

        return largest.ToImmutable();
    }

    // Rectangles within others are dropped: only maximal ones are kept, or the list would grow with every piece.
    private static List<EmptyRectangle> Without(List<EmptyRectangle> empty, EmptyRectangle taken)
    {
        var left = new List<EmptyRectangle>(empty.Count + 4);
        foreach (EmptyRectangle one in empty)
        {
            left.AddRange(one.Overlaps(taken) ? one.Around(taken).Where(part => part.Width >= Least && part.Length >= Least) : [one]);
        }

        return [.. left.Distinct().Where(one => !left.Any(other => other != one && other.Holds(one)))];
    }

    // Left of it, right of it, before it and beyond it; where there is no room the width or length is zero or less.
    private IEnumerable<EmptyRectangle> Around(EmptyRectangle taken) =>
        [
            this with
            {
                Width = taken.X - X,
            },
            this with
            {
                X = taken.X + taken.Width,
                Width = X + Width - taken.X - taken.Width,
            },
            this with
            {
                Length = taken.Y - Y,
            },
            this with
            {
                Y = taken.Y + taken.Length,
                Length = Y + Length - taken.Y - taken.Length,
            },
        ];

    // Touching at an edge is not overlapping.
    private bool Overlaps(EmptyRectangle other) =>
        X < other.X + other.Width && other.X < X + Width && Y < other.Y + other.Length && other.Y < Y + Length;

    private bool Holds(EmptyRectangle other) =>
        X <= other.X && Y <= other.Y && X + Width >= other.X + other.Width && Y + Length >= other.Y + other.Length;
}
