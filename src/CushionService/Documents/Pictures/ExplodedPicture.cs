using CushionService.Documents.Drawings;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Scenes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Documents.Pictures;

/// <summary>The pieces of a cushion drawn apart, numbered in the order in which they are sewn, with a list of their names.</summary>
internal static class ExplodedPicture
{
    private const double Wide = 1000;
    private const double Margin = 20;
    private const double Tallest = 760;
    private const double Type = 22;
    private const int Columns = 3;
    private const int MostListed = 30;

    /// <summary>The picture.</summary>
    /// <param name="source">What is drawn.</param>
    /// <param name="words">Its words.</param>
    /// <param name="id">Prefix of its ids.</param>
    /// <param name="detail">How much of prints and hatches is drawn.</param>
    public static string Write(PictureSource source, PictureWords words, string id, int detail)
    {
        var camera = new Camera(CameraTurn.None);
        ExplodedScene apart = new(source.Scene);
        Box seen = Box.Around([.. Draw(source, apart, camera, new Frame(1, default), PrintPainter.Bare).SelectMany(shape => shape.Points)]);
        double scale = Math.Min((Wide - 2 * Margin) / seen.Width, (Tallest - 2 * Margin) / seen.Height);
        var box = new Box(Margin, Margin, Wide - 2 * Margin, scale * seen.Height);
        var frame = Frame.Within(seen, box);
        List<Shape> shapes = Draw(source, apart, camera, frame, detail);
        ScenePart[] listed = [.. apart.Parts.Take(MostListed)];
        List<(int Number, Spot Middle, string Label)> named =
        [
            .. listed.Select(part =>
                (apart.NumberOf(part), Seen(apart.Middle(part)), words.Text(PictureTexts.Numbered(apart.NumberOf(part), part.Panel.Part)))
            ),
            .. Based(source, apart)
                .Take(1)
                .Select(part => (Number: apart.Parts.Count + 1, Middle: Seen(apart.Middle(part) + apart.UnderBottom)))
                .Select(one => (one.Number, one.Middle, words.Text(PictureTexts.Base(one.Number)))),
        ];
        NumberBadges.Draw(shapes, [.. named.Select(one => (one.Number, one.Middle))], Type);
        double top = box.Bottom + 2 * Margin;
        int rows = (named.Count + Columns - 1) / Columns;
        for (int i = 0; i < named.Count; i++)
        {
            Spot at = new(Margin + (Wide - 2 * Margin) / Columns * (i / rows), top + 1.5 * Type * (i % rows) + Type);
            shapes.Add(Text(at, TextWidth.Shorten(named[i].Label, (Wide - 2 * Margin) / Columns / Type - 1)));
        }

        int more = apart.Parts.Count - listed.Length;
        if (more > 0)
        {
            rows++;
            shapes.Add(Text(new Spot(Margin, top + 1.5 * Type * (rows - 1) + Type), words.Text(PictureTexts.More(more))));
        }

        return PictureWriter.Write(words.Exploded(id, listed, apart), (int)Math.Ceiling(top + 1.5 * Type * rows + Margin), shapes);

        Spot Seen(Vector middle) => frame.At(camera.See(middle));
    }

    // The undersides that an anti-slip base is sewn to.
    private static IEnumerable<ScenePart> Based(PictureSource source, ExplodedScene apart) =>
        source.Cushion.Trim.Base == BaseKind.AntiSlip ? apart.Parts.Where(part => part.Panel.Part.Kind == PartKind.Bottom) : [];

    private static Shape Text(Spot at, string text) => new([at], false, new Ink(Tint.Line, 1, null, Type)) { Text = text };

    // Undersides first, then walls, then upper faces; of each part what faces away first, then what is sewn to it.
    private static List<Shape> Draw(PictureSource source, ExplodedScene apart, Camera camera, Frame frame, int detail)
    {
        var sketch = new Sketch(camera, frame);
        var patches = new PatchPainter(source, sketch, detail);
        var features = new FeaturePainter(source, sketch, detail);
        var trims = new TrimPainter(source, sketch, patches);
        var ties = new TiePainter(source, sketch);
        EdgingLines[] edgings = [.. EdgingLines.Of(source.Scene)];
        HashSet<ScenePart> based = [.. Based(source, apart)];
        foreach (ScenePart part in apart.FromFurthest(camera))
        {
            VisiblePatch[] seen =
            [
                .. part
                    .Patches.Where(patch => patch.Kind != PatchKind.Hidden && patch.Kind != PatchKind.Ruffle)
                    .SelectMany(patch => VisiblePatch.Of(part, patch, null, camera))
                    .Select(patch => patch with { Shift = apart.ShiftOf(part) })
                    .OrderBy(patch => patch.IsAway ? 0 : 1)
                    .ThenBy(patch => camera.IsUp(patch.Patch.Surface.Normal(patch.Middle)) ? 1 : 0),
            ];
            foreach (VisiblePatch patch in based.Contains(part) ? seen : [])
            {
                features.Base(patch with { Shift = patch.Shift + apart.UnderBottom });
            }

            foreach (VisiblePatch patch in seen)
            {
                patches.Paint(patch);
                if (!patch.IsAway)
                {
                    features.On(patch);
                }
            }

            trims.Apart(edgings, part.Panel.Part, apart.ShiftOf(part));
            ties.On(part, apart.ShiftOf(part));
        }

        return sketch.Shapes;
    }
}
