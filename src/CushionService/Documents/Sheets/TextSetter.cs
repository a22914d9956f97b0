using CushionService.Documents.Drawings;

namespace CushionService.Documents.Sheets;

/// <summary>Sets words on a page.</summary>
/// <param name="Em">Size of the sheet's type, in millimetres.</param>
/// <param name="Accent">Colour of headings.</param>
/// <param name="Share">How large everything is, of the size that it has by itself.</param>
internal sealed record TextSetter(double Em, string Accent, double Share = 1)
{
    /// <summary>Height of a line, in ems.</summary>
    public const double Pitch = 1.32;

    /// <summary>Size of remarks beside the text, in ems of it.</summary>
    public const double Small = 0.86;

    // From the top of a line to its baseline, in ems.
    private const double Rise = 0.95;
    private const string Ink = "#111111";

    /// <summary>A paragraph as slabs: a short one whole, a long one line by line, never fewer than two together.</summary>
    /// <param name="paragraph">Its words and its tone.</param>
    /// <param name="width">The width that it has, in millimetres.</param>
    public IEnumerable<Slab> Paragraph(Paragraph paragraph, double width)
    {
        if (paragraph.Tone == Tone.Notice)
        {
            return [Notice(paragraph, width)];
        }

        double size = Em * SizeOf(paragraph.Tone);
        IReadOnlyList<TextLine> lines = LineBreaks.Of(paragraph.Runs, width / size);
        return Lines(lines, size);
    }

    /// <summary>A heading.</summary>
    /// <param name="heading">Its words and its level.</param>
    /// <param name="width">The width that it has, in millimetres.</param>
    public Slab Heading(Heading heading, double width)
    {
        double size =
            Em
            * heading.Level switch
            {
                1 => 1.9,
                2 => 1.3,
                _ => 1.08,
            };
        IReadOnlyList<TextLine> lines = LineBreaks.Of([new Run(heading.Text, true)], width / size);
        double text = lines.Count * size * Pitch;
        return new Slab(
            text + (heading.Level == 2 ? 0.35 * Em : 0),
            (canvas, at) =>
            {
                canvas.Open("g", ("fill", Accent), ("data-heading", Canvas.Number(heading.Level)));
                Write(canvas, at, lines, size);
                canvas.Close();
                if (heading.Level == 2)
                {
                    canvas.Open("g", ("stroke", Accent), ("stroke-width", "0.4"));
                    canvas.Line(at + new Spot(0, text), at + new Spot(width, text));
                    canvas.Close();
                }
            }
        )
        {
            Above = heading.Level == 1 ? 0 : 0.9 * Em,
            KeepsNext = true,
        };
    }

    /// <summary>Lines as slabs.</summary>
    /// <param name="lines">At least one.</param>
    /// <param name="size">Of the type, in millimetres.</param>
    public IEnumerable<Slab> Lines(IReadOnlyList<TextLine> lines, double size)
    {
        const int Whole = 5;
        double above = 0.35 * Em;
        if (lines.Count <= Whole)
        {
            return [new Slab(lines.Count * size * Pitch, (canvas, at) => Write(canvas, at, lines, size)) { Above = above }];
        }

        return lines.Select(
            (line, i) =>
                new Slab(size * Pitch, (canvas, at) => Write(canvas, at, [line], size))
                {
                    Above = i == 0 ? above : 0,
                    KeepsNext = i < 2 || i == lines.Count - 2 || i == lines.Count - 3,
                }
        );
    }

    /// <summary>Writes lines from their upper left corner.</summary>
    /// <param name="canvas">The page.</param>
    /// <param name="at">The upper left corner, in millimetres.</param>
    /// <param name="lines">The lines.</param>
    /// <param name="size">Of the type, in millimetres.</param>
    public static void Write(Canvas canvas, Spot at, IReadOnlyList<TextLine> lines, double size)
    {
        for (int i = 0; i < lines.Count; i++)
        {
            foreach ((double x, Run run) in lines[i].Parts)
            {
                Spot spot = at + new Spot(x * size, (i * Pitch + Rise) * size);
                if (run.Link is { } link)
                {
                    canvas.Open("a", ("href", link));
                    canvas.Text(spot, run.Text, size, bold: run.Bold);
                    canvas.Close();
                }
                else
                {
                    canvas.Text(spot, run.Text, size, bold: run.Bold);
                }
            }
        }
    }

    private static double SizeOf(Tone tone) =>
        tone switch
        {
            Tone.Small => Small,
            Tone.Large => 1.25,
            _ => 1,
        };

    private Slab Notice(Paragraph paragraph, double width)
    {
        double room = 0.6 * Em;
        IReadOnlyList<TextLine> lines = LineBreaks.Of(paragraph.Runs, (width - 2 * room) / Em);
        double height = lines.Count * Em * Pitch + room;
        return new Slab(
            height,
            (canvas, at) =>
            {
                canvas.Open("g", ("fill", "none"), ("stroke", Ink), ("stroke-width", "0.4"));
                canvas.Rectangle(new Box(at.X, at.Y, width, height));
                canvas.Close();
                Write(canvas, at + new Spot(room, room / 2), lines, Em);
            }
        )
        {
            Above = 0.45 * Em,
        };
    }
}
