namespace CushionService.Documents.Drawings;

/// <summary>A point of a drawing or of the fabric.</summary>
internal readonly record struct Spot(double X, double Y)
{
    public static Spot operator +(Spot a, Spot b) => new(a.X + b.X, a.Y + b.Y);

    public static Spot operator -(Spot a, Spot b) => new(a.X - b.X, a.Y - b.Y);

    public static Spot operator *(double times, Spot a) => new(times * a.X, times * a.Y);

    /// <summary>Distance from the origin.</summary>
    public double Size => Math.Sqrt(X * X + Y * Y);

    /// <summary>The same direction, one long; straight down for no direction at all.</summary>
    public Spot Unit() => Size == 0 ? new Spot(0, 1) : 1 / Size * this;

    /// <summary>A quarter turn on.</summary>
    /// <remarks>Clockwise where y runs down the page, counter-clockwise where it runs up.</remarks>
    public Spot Turned() => new(-Y, X);
}
