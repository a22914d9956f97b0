using CushionService.Documents.Drawings;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Scenes;

namespace CushionService.Documents.Pictures;

/// <summary>A step of the making on the finished cushion: the panels that it handles in their fabrics, the others quiet, and the seams
/// between those panels marked.</summary>
internal static class StepPicture
{
    private const double Wide = 1000;
    private const double Margin = 20;
    private const double Tallest = 640;
    private static readonly Ink Marked = new(null, 1, Tint.Accent, 9);

    /// <summary>The picture; null where the finished cushion shows none of the panels.</summary>
    /// <param name="source">What is drawn.</param>
    /// <param name="words">Its words.</param>
    /// <param name="id">Prefix of its ids.</param>
    /// <param name="number">The step's number, from 1.</param>
    /// <param name="parts">The panels that it handles.</param>
    /// <param name="key">What the step says: "step.hem"; empty when not known.</param>
    public static string? Write(PictureSource source, PictureWords words, string id, int number, IReadOnlySet<PartName> parts, string key)
    {
        HashSet<PartName> shown = [.. source.Scene.Parts.Select(part => part.Panel.Part).Where(parts.Contains)];
        if (shown.Count == 0)
        {
            return null;
        }

        PictureSource step = source.With(shown);
        // From the side from which more of the panels is seen.
        Camera camera = new[] { CameraTurn.None, CameraTurn.Over }.Select(turn => new Camera(turn)).MaxBy(camera => Seen(step, camera))!;
        Box seen = Box.Around([.. Draw(step, key, camera, new Frame(1, default), PrintPainter.Bare).SelectMany(shape => shape.Points)]);
        double scale = Math.Min((Wide - 2 * Margin) / seen.Width, (Tallest - 2 * Margin) / seen.Height);
        var box = new Box(Margin, Margin, Wide - 2 * Margin, scale * seen.Height);
        List<Shape> shapes = Draw(step, key, camera, Frame.Within(seen, box), 1);
        return PictureWriter.Write(words.Step(id, number, shown), (int)Math.Ceiling(box.Bottom + Margin), shapes);
    }

    // How much of the panels is seen.
    private static double Seen(PictureSource step, Camera camera) =>
        step.Seen(camera)
            .Where(patch => step.Shows(patch.Part.Panel.Part))
            .Sum(patch => PlanePolygon.Area(patch.Domain) * camera.Facing(patch.Patch.Surface.Normal(patch.Middle)));

    private static List<Shape> Draw(PictureSource step, string key, Camera camera, Frame frame, int detail)
    {
        var sketch = new Sketch(camera, frame);
        new ScenePainter(step, sketch, detail).Paint();
        foreach (SceneLine line in StepLines.Of(step, key))
        {
            sketch.Draw(line.Points, Marked);
        }

        return sketch.Shapes;
    }
}
