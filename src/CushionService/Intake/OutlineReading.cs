using System.Collections.Frozen;
using System.Collections.Immutable;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Outlines;
using DrawnOutline = CushionService.Engine.Specifications.Outlines.Outline;
using Outline = CushionService.Contract.Orders.Outline;

namespace CushionService.Intake;

/// <summary>Reads an order's outline as the engine's: which fields each kind takes, and what they make.</summary>
internal static class OutlineReading
{
    private static readonly FrozenDictionary<OutlineKind, ImmutableArray<string>> FieldsByKind = new Dictionary<
        OutlineKind,
        ImmutableArray<string>
    >
    {
        [OutlineKind.Rectangle] = [nameof(Outline.Width), nameof(Outline.Depth)],
        [OutlineKind.RoundedRectangle] = [nameof(Outline.Width), nameof(Outline.Depth), nameof(Outline.CornerRadius)],
        [OutlineKind.Circle] = [nameof(Outline.Diameter)],
        [OutlineKind.Oval] = [nameof(Outline.Width), nameof(Outline.Depth)],
        [OutlineKind.HalfRound] = [nameof(Outline.Width)],
        [OutlineKind.DShape] = [nameof(Outline.Width), nameof(Outline.Depth)],
        [OutlineKind.Stadium] = [nameof(Outline.Width), nameof(Outline.Depth)],
        [OutlineKind.Trapezoid] = [nameof(Outline.FrontWidth), nameof(Outline.BackWidth), nameof(Outline.Depth)],
        [OutlineKind.Tee] = [nameof(Outline.Width), nameof(Outline.Depth), nameof(Outline.EarWidth), nameof(Outline.EarDepth)],
        [OutlineKind.Ell] = [nameof(Outline.Width), nameof(Outline.Depth), nameof(Outline.NotchWidth), nameof(Outline.NotchDepth)],
        [OutlineKind.U] = [nameof(Outline.Width), nameof(Outline.Depth), nameof(Outline.NotchWidth), nameof(Outline.NotchDepth)],
        [OutlineKind.RegularPolygon] = [nameof(Outline.SideCount), nameof(Outline.SideLength)],
        [OutlineKind.Polygon] = [nameof(Outline.Points)],
    }.ToFrozenDictionary();

    private static readonly FrozenDictionary<OutlineKind, string> OptionalByKind = new Dictionary<OutlineKind, string>
    {
        [OutlineKind.Trapezoid] = nameof(Outline.BackOffset),
        [OutlineKind.Ell] = nameof(Outline.NotchSide),
        [OutlineKind.Polygon] = nameof(Outline.CornerRadius),
    }.ToFrozenDictionary();

    /// <summary>The fields that a kind must have.</summary>
    public static ImmutableArray<string> Required(OutlineKind kind) => FieldsByKind[kind];

    /// <summary>The field that a kind may have besides; null when there is none.</summary>
    public static string? Optional(OutlineKind kind) => OptionalByKind.GetValueOrDefault(kind);

    /// <summary>The outline; null when a field that it must have is missing or cannot be read.</summary>
    public static DrawnOutline? Read(Outline outline, OrderReading order)
    {
        if (outline.Kind is not { } kind || !FieldsByKind.TryGetValue(kind, out ImmutableArray<string> fields) || !fields.All(Has))
        {
            return null;
        }

        Length? corner = outline.CornerRadius is null ? Length.Zero : order.Length(outline.CornerRadius);
        return kind switch
        {
            OutlineKind.Rectangle => new RectangleOutline(At(outline.Width), At(outline.Depth)),
            OutlineKind.RoundedRectangle => new RoundedRectangleOutline(At(outline.Width), At(outline.Depth), At(outline.CornerRadius)),
            OutlineKind.Circle => new CircleOutline(At(outline.Diameter)),
            OutlineKind.Oval => new OvalOutline(At(outline.Width), At(outline.Depth)),
            OutlineKind.HalfRound => new HalfRoundOutline(At(outline.Width)),
            OutlineKind.DShape => new DShapeOutline(At(outline.Width), At(outline.Depth)),
            OutlineKind.Stadium => new StadiumOutline(At(outline.Width), At(outline.Depth)),
            OutlineKind.Trapezoid => new TrapezoidOutline(
                At(outline.FrontWidth),
                At(outline.BackWidth),
                At(outline.Depth),
                order.Length(outline.BackOffset) ?? TrapezoidOutline.Centred(At(outline.FrontWidth), At(outline.BackWidth))
            ),
            OutlineKind.Tee => new TeeOutline(At(outline.Width), At(outline.Depth), At(outline.EarWidth), At(outline.EarDepth)),
            OutlineKind.Ell => new EllOutline(
                At(outline.Width),
                At(outline.Depth),
                At(outline.NotchWidth),
                At(outline.NotchDepth),
                outline.NotchSide ?? Side.Right
            ),
            OutlineKind.U => new UOutline(At(outline.Width), At(outline.Depth), At(outline.NotchWidth), At(outline.NotchDepth)),
            OutlineKind.RegularPolygon => new RegularPolygonOutline(outline.SideCount!.Value, At(outline.SideLength)),
            OutlineKind.Polygon => corner is { } radius && Corners(outline.Points!, order) is { } points
                ? new PolygonOutline(points, radius)
                : null,
            _ => null,
        };

        Length At(Measure? measure) => order.Length(measure)!.Value;

        bool Has(string field) =>
            field switch
            {
                nameof(Outline.SideCount) => outline.SideCount is >= 3 and <= 24,
                nameof(Outline.Points) => outline.Points is { Count: >= 3 and <= 100 },
                _ => order.Length(Field(outline, field)) > Length.Zero,
            };
    }

    /// <summary>The corners of a polygon, counter-clockwise; null when one cannot be read.</summary>
    public static ImmutableArray<Point>? Corners(IReadOnlyList<Corner> points, OrderReading order)
    {
        var corners = ImmutableArray.CreateBuilder<Point>(points.Count);
        foreach (Corner? point in points)
        {
            if (point is null || order.Length(point.X) is not { } x || order.Length(point.Y) is not { } y)
            {
                return null;
            }

            corners.Add(new Point(OnMicrometre(x), OnMicrometre(y)));
        }

        ImmutableArray<Point> drawn = corners.ToImmutable();
        return Polygon.Area(drawn).SquareNanometres < 0 ? [.. drawn.Reverse()] : drawn;
    }

    // The nesting kernels' finest grid; no workroom cuts finer.
    private static Length OnMicrometre(Length length) => Length.FromNanometres((long)Math.Round(length.Nanometres / 1000.0) * 1000);

    /// <summary>A field by its name.</summary>
    public static Measure? Field(Outline outline, string field) =>
        field switch
        {
            nameof(Outline.Width) => outline.Width,
            nameof(Outline.Depth) => outline.Depth,
            nameof(Outline.Diameter) => outline.Diameter,
            nameof(Outline.CornerRadius) => outline.CornerRadius,
            nameof(Outline.FrontWidth) => outline.FrontWidth,
            nameof(Outline.BackWidth) => outline.BackWidth,
            nameof(Outline.BackOffset) => outline.BackOffset,
            nameof(Outline.EarWidth) => outline.EarWidth,
            nameof(Outline.EarDepth) => outline.EarDepth,
            nameof(Outline.NotchWidth) => outline.NotchWidth,
            nameof(Outline.NotchDepth) => outline.NotchDepth,
            nameof(Outline.SideLength) => outline.SideLength,
            _ => null,
        };
}
