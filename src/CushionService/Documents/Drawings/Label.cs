namespace CushionService.Documents.Drawings;

/// <summary>The words that fit into a room, the most telling first.</summary>
/// <param name="Lines">From the top; the first of several, or a number alone, is bold.</param>
/// <param name="Size">Height of the type, in millimetres of the nominal print.</param>
/// <param name="Upwards">Whether it reads upwards.</param>
/// <param name="Named">Whether it names the piece; where not, a legend must.</param>
internal sealed record Label(IReadOnlyList<string> Lines, double Size, bool Upwards, bool Named)
{
    /// <summary>Line pitch, in ems.</summary>
    public const double Pitch = 1.25;

    // Heights of type in millimetres: of several lines and of one, and the least that is still read, a number alone being
    // read smaller.
    private const double Largest = 3.4;
    private const double LargestLine = 2.8;
    private const double Smallest = 2.1;
    private const double SmallestNumber = 1.5;

    /// <summary>Whether a name is the best one, and not one that several pieces may share.</summary>
    public bool IsWhole { get; private init; } = true;

    /// <summary>The label of a piece in a room.</summary>
    /// <param name="number">The piece's number in the list of pieces.</param>
    /// <param name="names">What it may be called, the best first.</param>
    /// <param name="size">Its cut size.</param>
    /// <param name="width">Of the room, in millimetres.</param>
    /// <param name="height">Of the room, in millimetres.</param>
    /// <returns>Null when not even the number fits.</returns>
    public static Label? For(string number, IReadOnlyList<string> names, string size, double width, double height)
    {
        foreach (string name in names)
        {
            string[][] wordings =
            [
                [$"{number}: {name}", size],
                [number, name, size],
                [$"{number}: {name}, {size}"],
            ];
            if (Best(wordings, Smallest, true, width, height) is { } named)
            {
                return named with { IsWhole = name == names[0] };
            }
        }

        return Best(
                [
                    [number, size],
                    [$"{number}: {size}"],
                ],
                Smallest,
                false,
                width,
                height
            )
            ?? Best(
                [
                    [number],
                ],
                SmallestNumber,
                false,
                width,
                height
            );
    }

    /// <summary>Width and height of the block, in millimetres, as it reads.</summary>
    /// <param name="lines">What is written.</param>
    /// <param name="size">Height of the type, in millimetres.</param>
    public static (double Width, double Height) Extent(IReadOnlyList<string> lines, double size)
    {
        double widest = 0;
        for (int i = 0; i < lines.Count; i++)
        {
            widest = Math.Max(widest, TextWidth.Of(lines[i], IsBold(lines, i)));
        }

        return (widest * size, ((lines.Count - 1) * Pitch + 1.1) * size);
    }

    /// <summary>Writes the lines about the middle of a room.</summary>
    /// <param name="canvas">The drawing.</param>
    /// <param name="centre">In user units.</param>
    public void Draw(Canvas canvas, Spot centre)
    {
        double size = Size * canvas.Mm;
        for (int i = 0; i < Lines.Count; i++)
        {
            double down = (i + 0.5 - Lines.Count / 2.0) * Pitch * size + 0.31 * size;
            Spot at = Upwards ? centre + new Spot(down, 0) : centre + new Spot(0, down);
            canvas.Text(at, Lines[i], size, "middle", IsBold(Lines, i), Upwards);
        }
    }

    private static bool IsBold(IReadOnlyList<string> lines, int i) => i == 0 && (lines.Count > 1 || !lines[0].Contains(' '));

    private static Label? Best(string[][] wordings, double smallest, bool named, double width, double height)
    {
        Label? best = null;
        // Upwards only where no wording fits the right way round.
        foreach (bool upwards in (ReadOnlySpan<bool>)[false, true])
        {
            foreach (string[] lines in wordings)
            {
                (double widest, double tall) = Extent(lines, 1);
                (double along, double across) = upwards ? (height, width) : (width, height);
                double size = Math.Min(lines.Length == 1 ? LargestLine : Largest, Math.Min(along / widest, across / tall));
                best = size >= smallest && size > (best?.Size ?? 0) ? new Label(lines, size, upwards, named) : best;
            }

            if (best is not null)
            {
                return best;
            }
        }

        return null;
    }
}
