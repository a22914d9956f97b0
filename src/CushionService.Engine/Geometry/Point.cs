using CushionService.Engine.Measures;

namespace CushionService.Engine.Geometry;

/// <summary>A point of a panel or a cut piece; x runs across the fabric, y along it, upwards.</summary>
/// <param name="X">Across.</param>
/// <param name="Y">Along.</param>
public readonly record struct Point(Length X, Length Y)
{
    /// <summary>The point moved.</summary>
    public Point Moved(Length right, Length up) => new(X + right, Y + up);
}
