using System.Text.Json.Nodes;

namespace CushionService.Tests.Orders;

/// <summary>What any caller can check of a quote with no more than its numbers; it shares no code with the service.</summary>
internal static class LayoutCheck
{
    // Answers are rounded numbers of units; half a micrometre in the finest of them.
    private const double Slack = 1e-6;

    /// <summary>Checks every layout and yardage of a quote.</summary>
    public static void Check(JsonObject quote)
    {
        JsonObject[] pieces = [.. quote["pieces"]!.AsArray().Select(piece => piece!.AsObject())];
        foreach (JsonObject layout in quote["layouts"]!.AsArray().Select(layout => layout!.AsObject()))
        {
            string fabric = layout["fabric"]!.GetValue<string>();
            JsonObject[] cut = [.. pieces.Where(piece => piece["fabric"]!.GetValue<string>() == fabric)];
            Box[] boxes = [.. layout["placements"]!.AsArray().Select(placement => Box.Of(placement!.AsObject()))];
            PlacedOnce(boxes, cut);
            WithinFabric(boxes, layout);
            Apart([.. boxes.Select(box => OutlineOf(box, cut))]);
            Assert.True(Number(layout, "lowerBound") <= Number(layout, "length") + Slack, "The bound is above the length.");
            SoldLongEnough(quote, fabric, Number(layout, "length"));
        }
    }

    private static void PlacedOnce(Box[] boxes, JsonObject[] cut)
    {
        var demanded = cut.SelectMany(piece =>
            Enumerable.Range(1, piece["quantity"]!.GetValue<int>()).Select(copy => (piece["id"]!.GetValue<string>(), copy))
        );
        Assert.Equal(demanded.Order(), boxes.Select(box => (box.Piece, box.Copy)).Order());
        foreach (Box box in boxes)
        {
            JsonObject piece = cut.Single(piece => piece["id"]!.GetValue<string>() == box.Piece);
            (double width, double length) = (Number(piece, "width"), Number(piece, "length"));
            bool turned = box.Rotation is 90 or 270;
            Assert.Equal(turned ? length : width, box.Width, Slack);
            Assert.Equal(turned ? width : length, box.Length, Slack);
            int grain = piece["grain"]!.GetValue<string>() == "railroaded" ? 90 : 0;
            Assert.Contains(
                (box.Rotation + 360 - grain) % 360,
                piece["rotation"]!.GetValue<string>() switch
                {
                    "none" => new[] { 0 },
                    "half-turn" => [0, 180],
                    _ => [0, 90, 180, 270],
                }
            );
        }
    }

    private static void WithinFabric(Box[] boxes, JsonObject layout) =>
        Assert.All(
            boxes,
            box =>
                Assert.True(
                    box.X >= -Slack
                        && box.Y >= -Slack
                        && box.X + box.Width <= Number(layout, "width") + Slack
                        && box.Y + box.Length <= Number(layout, "length") + Slack,
                    $"{box} lies beyond the fabric"
                )
        );

    private static void Apart(ConvexOutline[] outlines)
    {
        for (int i = 0; i < outlines.Length; i++)
        {
            for (int j = 0; j < i; j++)
            {
                Assert.False(outlines[i].Overlaps(outlines[j], Slack), $"{outlines[i].Name} lies on {outlines[j].Name}");
            }
        }
    }

    private static ConvexOutline OutlineOf(Box box, JsonObject[] cut)
    {
        JsonObject piece = cut.Single(piece => piece["id"]!.GetValue<string>() == box.Piece);
        (double width, double length) = (Number(piece, "width"), Number(piece, "length"));
        (double X, double Y)[] corners = piece["points"] is JsonArray points
            ? [.. points.Select(point => (point![0]!.GetValue<double>(), point[1]!.GetValue<double>()))]
            : [(0, 0), (width, 0), (width, length), (0, length)];
        return ConvexOutline.Laid($"{box.Piece} {box.Copy}", corners, box.Rotation, box.X, box.Y);
    }

    private static void SoldLongEnough(JsonObject quote, string fabric, double length)
    {
        JsonObject line = quote["yardage"]!
            .AsArray()
            .Select(line => line!.AsObject())
            .Single(line => line["fabric"]!.GetValue<string>() == fabric);
        double unit = quote["units"]!.GetValue<string>() switch
        {
            "in" => 25.4,
            "cm" => 10,
            _ => 1,
        };
        double sold = Number(line, "soldLength") * (line["soldUnit"]!.GetValue<string>() == "yd" ? 914.4 : 1000);

        Assert.Equal(length, Number(line, "layoutLength"), Slack);
        Assert.True(length * unit <= sold + Slack, $"{sold} mm are sold, {length * unit} mm are laid out.");
    }

    private static double Number(JsonObject record, string name) => record[name]!.GetValue<double>();

    private sealed record Box(string Piece, int Copy, int Rotation, double X, double Y, double Width, double Length)
    {
        public static Box Of(JsonObject placement) =>
            new(
                placement["piece"]!.GetValue<string>(),
                placement["copy"]!.GetValue<int>(),
                placement["rotation"]!.GetValue<int>(),
                Number(placement, "x"),
                Number(placement, "y"),
                Number(placement, "width"),
                Number(placement, "length")
            );
    }
}
