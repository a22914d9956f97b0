using System.Globalization;
using CushionService.Documents.Drawings;

namespace CushionService.Documents.Sheets;

/// <summary>A sheet as pages, each a drawing in millimetres.</summary>
internal static class SheetPages
{
    /// <summary>Left, right and upper margin of a page, in millimetres.</summary>
    public const double Margin = 12;

    /// <summary>Lower margin of a page, in millimetres.</summary>
    public const double Foot = 15;

    // What is smaller cannot be read at arm's length (common practice, no source).
    private static readonly double[] Sizes = [1, 0.95, 0.9, 0.85, 0.8];

    /// <summary>The pages.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="cancellation">Gives up between two parts, and between two pages.</param>
    /// <returns>How many there are, and their drawings, each made when it is asked for.</returns>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    public static (int Count, IEnumerable<(string Drawing, Spot Size)> Drawn) Of(Sheet sheet, CancellationToken cancellation)
    {
        List<IReadOnlyList<(Slab Slab, double At)>> pages = [];
        foreach (Section section in sheet.Sections)
        {
            cancellation.ThrowIfCancellationRequested();
            pages.AddRange(Filled(sheet, section, SizeOf(sheet, section)));
        }

        var size = new Spot(sheet.Paper.Width, sheet.Paper.Height);
        return (
            pages.Count,
            pages.Select(
                (page, i) =>
                {
                    cancellation.ThrowIfCancellationRequested();
                    return (Draw(sheet, page, i + 1, pages.Count), size);
                }
            )
        );
    }

    /// <summary>How large the type of a part is, as a share of the sheet's: the largest that takes the fewest pages.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="section">The part.</param>
    /// <param name="room">The share of a page's height that is filled: browsers set lines a little wider apart than we do.</param>
    public static double SizeOf(Sheet sheet, Section section, double room = 1) =>
        section.IsFitted ? Sizes.MinBy(size => Filled(sheet, section, size, room).Count) : 1;

    private static IReadOnlyList<IReadOnlyList<(Slab Slab, double At)>> Filled(Sheet sheet, Section section, double size, double room = 1)
    {
        var setter = new BlockSetter(new TextSetter(sheet.Look.Em * size, sheet.Look.Accent, size));
        return PageFill.Of(setter.Set(section.Blocks, sheet.Paper.Width - 2 * Margin), room * (sheet.Paper.Height - Margin - Foot));
    }

    private static string Draw(Sheet sheet, IReadOnlyList<(Slab Slab, double At)> slabs, int number, int count)
    {
        string id = string.Create(CultureInfo.InvariantCulture, $"page-{number}");
        var size = new Spot(sheet.Paper.Width, sheet.Paper.Height);
        string title = sheet.PageNumber(number, count);
        var canvas = new Canvas(size, 1, id, $"{sheet.Title}, {title}", sheet.Title);
        foreach ((Slab slab, double at) in slabs)
        {
            slab.Draw(canvas, new Spot(Margin, Margin + at));
        }

        // The title is cut short where the number of the page needs the room.
        double foot = sheet.Paper.Height - Foot + 7;
        double type = 8 * Look.Point;
        double room = (sheet.Paper.Width - 2 * Margin) / type - LetterWidth.Of(title) - 2;
        canvas.Text(new Spot(Margin, foot), TextWidth.Shorten(PrintableText.Of(sheet.Title), room), type);
        canvas.Text(new Spot(sheet.Paper.Width - Margin, foot), title, type, "end");
        return canvas.Finish();
    }
}
