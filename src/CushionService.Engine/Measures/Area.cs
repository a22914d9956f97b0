namespace CushionService.Engine.Measures;

/// <summary>An area, exact to the square nanometre.</summary>
/// <param name="SquareNanometres">The area as a whole number of square nanometres.</param>
public readonly record struct Area(Int128 SquareNanometres)
{
    private const decimal SquareNanometresInSquareMillimetre = 1_000_000_000_000m;

    /// <summary>The area of a rectangle.</summary>
    public static Area Of(Length width, Length length) => new((Int128)width.Nanometres * length.Nanometres);

    /// <summary>An area of square millimetres, to the square nanometre.</summary>
    public static Area FromSquareMillimetres(decimal squareMillimetres) =>
        new((Int128)decimal.Round(squareMillimetres * SquareNanometresInSquareMillimetre));

    /// <summary>The area in square millimetres.</summary>
    public decimal SquareMillimetres => (decimal)SquareNanometres / SquareNanometresInSquareMillimetre;

    /// <summary>The area in squares of a unit.</summary>
    public double In(LengthUnit unit)
    {
        double side = Length.NanometresIn(unit);
        return (double)SquareNanometres / (side * side);
    }

    /// <summary>The share that this area is of another.</summary>
    public double ShareOf(Area whole) => (double)SquareNanometres / (double)whole.SquareNanometres;

    /// <summary>The sum.</summary>
    public static Area operator +(Area a, Area b) => new(a.SquareNanometres + b.SquareNanometres);

    /// <summary>A whole multiple.</summary>
    public static Area operator *(long times, Area a) => new(times * a.SquareNanometres);
}
