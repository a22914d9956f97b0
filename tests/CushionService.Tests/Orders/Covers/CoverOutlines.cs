using System.Text.Json.Nodes;
using CushionService.Contract;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Tests.Orders.Covers;

/// <summary>Outlines of every kind, with what each may have besides: radii for corners, arcs for sides, an offset.</summary>
internal static class CoverOutlines
{
    /// <summary>An outline of a kind, no larger than some inches across.</summary>
    public static JsonObject Of(OutlineKind kind, double largest, Sizes sizes)
    {
        double width = sizes.Between(10, largest),
            depth = sizes.Between(10, Math.Min(30, largest));
        JsonObject outline = kind switch
        {
            OutlineKind.Rectangle => new() { ["width"] = width, ["depth"] = depth },
            OutlineKind.RoundedRectangle => new()
            {
                ["width"] = width,
                ["depth"] = depth,
                ["cornerRadius"] = sizes.Between(0.5, 3),
            },
            OutlineKind.Circle => new() { ["diameter"] = sizes.Between(10, Math.Min(36, largest)) },
            OutlineKind.Oval => new() { ["width"] = width, ["depth"] = depth },
            OutlineKind.HalfRound => new() { ["width"] = width },
            OutlineKind.DShape => new() { ["width"] = width, ["depth"] = (width / 2) + sizes.Between(3, 12) },
            OutlineKind.RoundEnded => new() { ["width"] = depth + sizes.Between(4, 20), ["depth"] = depth },
            OutlineKind.Trapezoid => Trapezoid(width, depth, sizes),
            OutlineKind.Tee => new()
            {
                ["width"] = width + sizes.Of(8),
                ["depth"] = depth + sizes.Of(6),
                ["earWidth"] = sizes.Between(1, 3.5),
                ["earDepth"] = sizes.Between(3, 6),
            },
            OutlineKind.Ell => Ell(width, depth, sizes),
            OutlineKind.U => new()
            {
                ["width"] = width + sizes.Of(12),
                ["depth"] = depth + sizes.Of(8),
                ["notchWidth"] = sizes.Between(4, 9),
                ["notchDepth"] = sizes.Between(3, 7),
            },
            OutlineKind.RegularPolygon => new() { ["sideCount"] = sizes.Whole(3, 12), ["sideLength"] = sizes.Between(5, 12) },
            _ => Polygon(width + sizes.Of(4), depth + sizes.Of(4), sizes),
        };
        outline["kind"] = Words<OutlineKind>.Of(kind);
        if (kind == OutlineKind.Rectangle && sizes.Chance(25))
        {
            outline["corners"] = Radii(4, sizes);
        }

        return outline;
    }

    private static JsonObject Trapezoid(double width, double depth, Sizes sizes)
    {
        JsonObject outline = new()
        {
            ["frontWidth"] = width,
            ["backWidth"] = Math.Max(sizes.Of(6), width - sizes.Between(1, 6)),
            ["depth"] = depth,
        };
        if (sizes.Chance(40))
        {
            outline["backOffset"] = sizes.Between(0.5, 5);
        }

        return outline;
    }

    private static JsonObject Ell(double width, double depth, Sizes sizes)
    {
        JsonObject outline = new()
        {
            ["width"] = width + sizes.Of(8),
            ["depth"] = depth + sizes.Of(8),
            ["notchWidth"] = sizes.Between(4, 8),
            ["notchDepth"] = sizes.Between(4, 8),
        };
        if (sizes.Chance(50))
        {
            outline["notchSide"] = "left";
        }

        return outline;
    }

    // Five corners with a side to the front, the right, the back and the left: sharp, rounded, or with an arc for a side.
    private static JsonObject Polygon(double width, double depth, Sizes sizes)
    {
        double slant = sizes.Between(1, 4);
        JsonObject outline = new()
        {
            ["points"] = new JsonArray(
                new JsonArray(0, 0),
                new JsonArray(width, 0),
                new JsonArray(width + slant, depth),
                new JsonArray(slant, depth),
                new JsonArray(-slant, Math.Round(depth / 3))
            ),
        };
        switch (sizes.Whole(0, 3))
        {
            case 0:
                outline["cornerRadius"] = sizes.Between(0.5, 2);
                break;
            case 1:
                outline["corners"] = Radii(5, sizes);
                break;
            case 2:
                double bulge = sizes.Between(0.5, 2);
                outline["arcs"] = new JsonArray(
                    new JsonObject { ["side"] = sizes.Whole(1, 3), ["bulge"] = sizes.Chance(50) ? bulge : -bulge }
                );
                break;
        }

        return outline;
    }

    private static JsonArray Radii(int corners, Sizes sizes) =>
        [.. Enumerable.Range(0, corners).Select(_ => (JsonNode)(sizes.Chance(40) ? 0 : sizes.Between(0.5, 3)))];
}
