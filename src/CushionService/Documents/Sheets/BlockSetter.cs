using System.Globalization;
using CushionService.Documents.Drawings;

namespace CushionService.Documents.Sheets;

/// <summary>Sets blocks on a page, one below the other.</summary>
/// <param name="text">Sets words; its size of type is that of everything.</param>
internal sealed class BlockSetter(TextSetter text)
{
    // In ems: between a step's words and its picture.
    private const double Aside = 1;
    private readonly double _em = text.Em;

    /// <summary>The slabs of blocks.</summary>
    /// <param name="blocks">The blocks.</param>
    /// <param name="width">The width that they have, in millimetres.</param>
    public IReadOnlyList<Slab> Set(IReadOnlyList<Block> blocks, double width) => [.. blocks.SelectMany(block => Of(block, width))];

    private IEnumerable<Slab> Of(Block block, double width) =>
        block switch
        {
            Heading heading => [text.Heading(heading, width)],
            Paragraph paragraph => text.Paragraph(paragraph, width),
            Figure figure => [Of(figure, width)],
            Table table => new TableSetter(table, text, width).Slabs(),
            Bullets bullets => bullets.Entries.Select(entry => Of(entry, bullets.Ticked, width)),
            StepList steps => steps.Steps.Select(step => Of(step, width)),
            Beside beside => [Of(beside, width)],
            _ => throw new NotSupportedException($"No page knows the block {block.GetType().Name}."),
        };

    // Type is set smaller to fit a page, and drawings with it.
    private Slab Of(Figure figure, double width)
    {
        Spot size = SizeOf(figure, width);
        return new Slab(size.Y, (canvas, at) => canvas.Draw(figure.Drawing, at, size.X)) { Above = 0.6 * _em };
    }

    private Slab Of(IReadOnlyList<Run> entry, bool ticked, double width)
    {
        // Room for the sign, which is as high as a small letter so that it lies on the line.
        double indent = 1.7 * _em;
        IReadOnlyList<TextLine> lines = LineBreaks.Of(entry, (width - indent) / _em);
        return new Slab(
            lines.Count * _em * TextSetter.Pitch,
            (canvas, at) =>
            {
                double side = ticked ? _em : 0.3 * _em;
                var box = new Box(at.X + (ticked ? 0.1 : 0.5) * _em, at.Y + (ticked ? 0.12 : 0.5) * _em, side, side);
                canvas.Open("g", ("fill", ticked ? "none" : "#111111"), ("stroke", ticked ? "#111111" : "none"), ("stroke-width", "0.3"));
                canvas.Rectangle(box);
                canvas.Close();
                TextSetter.Write(canvas, at + new Spot(indent, 0), lines, _em);
            }
        )
        {
            Above = 0.25 * _em,
        };
    }

    private Slab Of(StepEntry step, double width)
    {
        double indent = 2.4 * _em;
        Spot picture = step.Picture is { } shown ? SizeOf(shown, width / 2) : new Spot(0, 0);
        double room = width - indent - (step.Picture is null ? 0 : picture.X + Aside * _em);
        Slab[] words = [.. step.Words.SelectMany(paragraph => text.Paragraph(paragraph, room))];
        double height = Math.Max(HeightOf(words), picture.Y);
        return new Slab(
            height,
            (canvas, at) =>
            {
                canvas.Open("g", ("fill", text.Accent));
                string number = step.Number.ToString(CultureInfo.InvariantCulture);
                canvas.Text(at + new Spot(1.7 * _em, 0.95 * _em), number, _em, "end", bold: true);
                canvas.Close();
                Draw(canvas, words, at + new Spot(indent, 0));
                if (step.Picture is { } figure)
                {
                    canvas.Draw(figure.Drawing, at + new Spot(width - picture.X, 0), picture.X);
                }
            }
        )
        {
            Above = (step.Picture is null ? 0.3 : 0.8) * _em,
        };
    }

    private Slab Of(Beside beside, double width)
    {
        double gap = beside.Framed ? 0 : 1.5 * _em;
        double inside = beside.Framed ? 0.6 * _em : 0;
        double shared = width - gap * (beside.Columns.Count - 1);
        // Shares of what is left when the gaps are taken off, so that the columns end with the page.
        double[] widths = [.. beside.Columns.Select(column => column.Share * shared)];
        Slab[][] columns = [.. beside.Columns.Select((column, i) => Set(column.Blocks, widths[i] - 2 * inside).ToArray())];
        double height = columns.Max(HeightOf) + 2 * inside;
        return new Slab(
            height,
            (canvas, at) =>
            {
                double x = at.X;
                for (int i = 0; i < columns.Length; i++)
                {
                    if (beside.Framed)
                    {
                        canvas.Open("g", ("fill", "none"), ("stroke", "#111111"), ("stroke-width", "0.2"), ("stroke-dasharray", "1.5 1"));
                        canvas.Rectangle(new Box(x, at.Y, widths[i], height));
                        canvas.Close();
                    }

                    Draw(canvas, columns[i], new Spot(x + inside, at.Y + inside));
                    x += widths[i] + gap;
                }
            }
        )
        {
            Above = beside.Framed ? 0 : 0.6 * _em,
        };
    }

    // As wide as it wants, no higher than it may be and no wider than the room; the drawing keeps its proportions.
    private Spot SizeOf(Figure figure, double width)
    {
        Spot box = ViewBox.Of(figure.Drawing);
        double most = Math.Min(figure.Width, figure.Height * box.X / box.Y);
        double shown = Math.Min(most * text.Share, width);
        return new Spot(shown, shown * box.Y / box.X);
    }

    private static double HeightOf(Slab[] slabs) => slabs.Select((slab, i) => slab.Height + (i == 0 ? 0 : slab.Above)).Sum();

    private static void Draw(Canvas canvas, Slab[] slabs, Spot at)
    {
        double y = at.Y;
        for (int i = 0; i < slabs.Length; i++)
        {
            y += i == 0 ? 0 : slabs[i].Above;
            slabs[i].Draw(canvas, at with { Y = y });
            y += slabs[i].Height;
        }
    }
}
