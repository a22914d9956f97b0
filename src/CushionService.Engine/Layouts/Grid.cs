using CushionService.Engine.Measures;

namespace CushionService.Engine.Layouts;

/// <summary>The whole-number grid on which a fabric's pieces are nested.</summary>
/// <remarks>Its unit is the greatest common divisor of all lengths, which is exact: a shortest layout exists in which every coordinate is a
/// sum of piece sizes (normal patterns, Christofides and Whitlock 1977). Where that unit is so fine that products would outgrow 64 bits, it
/// is a micrometre, and sizes are rounded outward.</remarks>
internal readonly record struct Grid
{
    private const long Micrometre = 1000;

    // Up to this many units along, an area in grid units fits 64 bits.
    private const long MostUnits = 1L << 31;

    private Grid(long unit) => Unit = unit;

    /// <summary>Nanometres in a grid unit, at least 1.</summary>
    public long Unit { get; }

    /// <summary>The grid for lengths that sum to <paramref name="total"/>.</summary>
    /// <param name="lengths">All sizes that must lie on the grid exactly.</param>
    /// <param name="total">An upper bound of any coordinate.</param>
    /// <returns>Every length is a whole number of units unless the unit is a micrometre.</returns>
    public static Grid For(IEnumerable<Length> lengths, Length total)
    {
        long unit = 0;
        foreach (Length length in lengths)
        {
            unit = (long)Fraction.GreatestCommonDivisor(Math.Abs(length.Nanometres), unit);
        }

        unit = Math.Max(unit, 1);
        return new Grid(total.Nanometres / unit > MostUnits ? Micrometre : unit);
    }

    /// <summary>A size on the grid, never smaller.</summary>
    /// <param name="length">At least zero.</param>
    public long Up(Length length) => (length.Nanometres + Unit - 1) / Unit;

    /// <summary>A room on the grid, never larger.</summary>
    /// <param name="length">At least zero.</param>
    public long Down(Length length) => length.Nanometres / Unit;

    /// <summary>A corner on the grid; cut outlines lie on whole micrometres, so that the nearest is exact on either grid.</summary>
    /// <param name="length">At least zero.</param>
    public long Nearest(Length length) => (length.Nanometres + (Unit / 2)) / Unit;

    /// <summary>The length of grid units.</summary>
    /// <param name="units">A coordinate or an extent on the grid.</param>
    public Length Back(long units) => Length.FromNanometres(units * Unit);
}
