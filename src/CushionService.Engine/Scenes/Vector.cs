namespace CushionService.Engine.Scenes;

/// <summary>A point or a direction of a scene, in millimetres: x to the right, y to the back, z upwards.</summary>
public readonly record struct Vector(double X, double Y, double Z)
{
    /// <summary>To the right.</summary>
    public static Vector Right { get; } = new(1, 0, 0);

    /// <summary>To the back.</summary>
    public static Vector Back { get; } = new(0, 1, 0);

    /// <summary>Upwards.</summary>
    public static Vector Up { get; } = new(0, 0, 1);

    /// <summary>Its length.</summary>
    public double Size => Math.Sqrt(Dot(this));

    /// <summary>Their sum.</summary>
    public static Vector operator +(Vector a, Vector b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    /// <summary>From the second to the first.</summary>
    public static Vector operator -(Vector a, Vector b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    /// <summary>The opposite direction.</summary>
    public static Vector operator -(Vector a) => new(-a.X, -a.Y, -a.Z);

    /// <summary>A multiple.</summary>
    public static Vector operator *(double times, Vector a) => new(times * a.X, times * a.Y, times * a.Z);

    /// <summary>The scalar product.</summary>
    public double Dot(Vector b) => (X * b.X) + (Y * b.Y) + (Z * b.Z);

    /// <summary>The vector product.</summary>
    public Vector Cross(Vector b) => new((Y * b.Z) - (Z * b.Y), (Z * b.X) - (X * b.Z), (X * b.Y) - (Y * b.X));

    /// <summary>The same direction, one long; none stays none.</summary>
    public Vector Unit() => Size is var size && size > 0 ? 1 / size * this : this;
}
