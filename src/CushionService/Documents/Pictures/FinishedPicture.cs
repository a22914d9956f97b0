using CushionService.Documents.Drawings;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Documents.Pictures;

/// <summary>A finished cushion, and where something of it is on a side that is not seen, the cushion turned over beside it.</summary>
internal static class FinishedPicture
{
    private const double Wide = 1000;
    private const double Margin = 16;
    private const double Tallest = 700;
    private const double Type = 22;

    // Of the main view's scale, and where both views are side by side, of the picture's width.
    private const double Smaller = 0.55;
    private const double Stacked = 2.1;

    /// <summary>The picture.</summary>
    /// <param name="source">What is drawn.</param>
    /// <param name="words">Its words.</param>
    /// <param name="id">Prefix of its ids.</param>
    /// <param name="detail">How much of prints and hatches is drawn.</param>
    public static string Write(PictureSource source, PictureWords words, string id, int detail)
    {
        var camera = new Camera(CameraTurn.None);
        Box seen = Extent(source, camera);
        CameraTurn? turn = Turn(source.Cushion);
        Box turned = turn is { } way ? Extent(source, new Camera(way)) : default;
        // A long cushion takes the whole width, and its turned view goes below it.
        bool beside = turn is not null && seen.Width < Stacked * seen.Height;
        double scale = Math.Min(
            (Wide - (beside ? 3 : 2) * Margin) / (seen.Width + (beside ? Smaller * turned.Width : 0)),
            (Tallest - 2 * Margin) / seen.Height
        );
        Box main = new(Margin, Margin, scale * seen.Width, scale * seen.Height);
        Box small = new(0, 0, Smaller * scale * turned.Width, Smaller * scale * turned.Height);
        double caption = turn is null ? 0 : 1.6 * Type,
            height = beside
                ? Math.Max(main.Height, small.Height + caption) + 2 * Margin
                : main.Bottom + (turn is null ? 0 : small.Height + caption) + Margin;
        double spare = Wide - 2 * Margin - main.Width - (beside ? small.Width + Margin : 0);
        main = main with { X = Margin + spare / 2 };
        var shapes = new List<Shape>();
        shapes.AddRange(Draw(source, camera, Frame.Within(seen, main), detail));
        if (turn is { } over)
        {
            small = beside
                ? small with
                {
                    X = main.Right + Margin,
                    Y = height - Margin - caption - small.Height,
                }
                : small with
                {
                    X = Wide - Margin - small.Width,
                    Y = main.Bottom,
                };
            // The smaller view is drawn more simply, since less of it could be seen.
            shapes.AddRange(Draw(source, new Camera(over), Frame.Within(turned, small), detail + 1));
            shapes.Add(
                new Shape([new Spot(small.Centre.X, small.Bottom + 1.2 * Type)], true, new Ink(Tint.Line, 1, null, Type))
                {
                    Text = words.Text(PictureTexts.TurnedOver),
                }
            );
        }

        return PictureWriter.Write(words.Finished(id, turn is not null), (int)Math.Ceiling(height), shapes);
    }

    private static List<Shape> Draw(PictureSource source, Camera camera, Frame frame, int detail)
    {
        var sketch = new Sketch(camera, frame);
        new ScenePainter(source, sketch, detail).Paint();
        return sketch.Shapes;
    }

    private static Box Extent(PictureSource source, Camera camera) =>
        Box.Around([.. Draw(source, camera, new Frame(1, default), PrintPainter.Bare).SelectMany(shape => shape.Points)]);

    // So that the side of the closure is seen, and else what is on the underside alone.
    private static CameraTurn? Turn(CushionSpecification cushion) =>
        cushion.Closure.Side switch
        {
            Side.Back or Side.Bottom => CameraTurn.Over,
            Side.Left => CameraTurn.Across,
            _ => cushion.Trim is { Straps: not null } or { Base: BaseKind.AntiSlip } || cushion.Fabrics.Bottom != cushion.Fabrics.Top
                ? CameraTurn.Over
                : null,
        };
}
