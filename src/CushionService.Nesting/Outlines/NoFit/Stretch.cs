using CushionService.Nesting.Search;

namespace CushionService.Nesting.Outlines.NoFit;

/// <summary>A segment of a convolution as part of the line that it lies on, in whole numbers.</summary>
/// <param name="DirectionX">Direction of the line across the strip, in lowest terms; not below 0.</param>
/// <param name="DirectionY">Direction along the strip; above 0 where the other is 0.</param>
/// <param name="Offset">Tells parallel lines apart: direction × point, the same for every point of the line.</param>
/// <param name="From">Where the stretch begins, in x, or in y on a line that runs along the strip.</param>
/// <param name="To">Where it ends, likewise; not below the beginning.</param>
/// <param name="Ahead">Whether the segment runs in the line's direction.</param>
/// <param name="Segment">Which segment of the convolution it is.</param>
internal readonly record struct Stretch(long DirectionX, long DirectionY, Int128 Offset, long From, long To, bool Ahead, int Segment)
    : IComparable<Stretch>
{
    /// <summary>Whether both lie on one line.</summary>
    public bool IsInLineWith(Stretch other) => (DirectionX, DirectionY, Offset) == (other.DirectionX, other.DirectionY, other.Offset);

    /// <summary>Stretches of one line are neighbours, in the order of where they begin.</summary>
    public int CompareTo(Stretch other) =>
        (DirectionX, DirectionY, Offset, From, Segment).CompareTo(
            (other.DirectionX, other.DirectionY, other.Offset, other.From, other.Segment)
        );

    /// <summary>The stretch of a segment, whose ends are whole numbers.</summary>
    /// <param name="segment">A segment that is no point.</param>
    /// <param name="index">Its number.</param>
    public static Stretch Of(ConvolutionSegment segment, int index)
    {
        var (x, y) = ((long)(segment.ToX - segment.FromX), (long)(segment.ToY - segment.FromY));
        var step = Divisors.Greatest(Math.Abs(x), Math.Abs(y));
        var ahead = x > 0 || (x == 0 && y > 0);
        var sign = ahead ? 1 : -1;
        var (directionX, directionY) = (sign * x / step, sign * y / step);
        var offset = (Int128)directionX * (long)segment.FromY - (Int128)directionY * (long)segment.FromX;
        var (from, to) = x != 0 ? ((long)segment.FromX, (long)segment.ToX) : ((long)segment.FromY, (long)segment.ToY);
        return new(directionX, directionY, offset, Math.Min(from, to), Math.Max(from, to), ahead, index);
    }
}
