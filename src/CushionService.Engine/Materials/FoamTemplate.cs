using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Materials;

/// <summary>The template with which a cushion's foam is sawn: its finished outline, moved outward all round.</summary>
internal static class FoamTemplate
{
    /// <summary>The corners, counter-clockwise from (0, 0) on; empty where a rectangle is sawn.</summary>
    /// <param name="cushion">The cushion; a bolster's foam is a roll, sawn from a block.</param>
    /// <param name="outward">How far the outline is moved, at least zero.</param>
    public static ImmutableArray<Point> Of(CushionSpecification cushion, Length outward)
    {
        if (cushion.Construction == Construction.Bolster || cushion.Outline.Kind == OutlineKind.Rectangle)
        {
            return [];
        }

        var finish = EdgeFinish.Seam(outward);
        List<Point> corners = OutlineOffset.Of(
            new Panel
            {
                Part = PartName.Top,
                Role = FabricRole.Top,
                Edges = [.. cushion.Outline.Sides.Select(side => new Edge(side.Name, side.Path, finish))],
            }
        );
        // Moved so that its bounding box starts at the origin, as the nesting and the drawings expect.
        Length left = -corners.Min(corner => corner.X),
            down = -corners.Min(corner => corner.Y);
        return [.. corners.Select(corner => corner.Moved(left, down))];
    }
}
