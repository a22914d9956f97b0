using System.Xml.Linq;
using CushionService.Documents.Drawings;

namespace CushionService.Tests.Documents;

/// <summary>Where a line of text can come out, by the estimate of its width and a cap height and descent of 0.76 and 0.24 em.</summary>
internal static class TextBoxes
{
    public static Box Of(XElement text)
    {
        double size = ParsedDrawing.Number(text, "font-size");
        double width = TextWidth.Of(text.Value, text.Attribute("font-weight") is not null) * size;
        double before = text.Attribute("text-anchor")!.Value switch
        {
            "start" => 0,
            "middle" => width / 2,
            _ => width,
        };
        (double x, double y) = (ParsedDrawing.Number(text, "x"), ParsedDrawing.Number(text, "y"));
        return text.Attribute("transform") is null
            ? new Box(x - before, y - 0.76 * size, width, size)
            : new Box(x - 0.76 * size, y + before - width, size, width);
    }
}
