using System.Xml.Linq;
using CushionService.Documents;
using CushionService.Documents.CutSheets;
using CushionService.Documents.Drawings;
using CushionService.Documents.Projects;
using CushionService.Documents.Sheets;

namespace CushionService.Tests.Documents.Sheets;

/// <summary>Names that are long, or that read from right to left, and orders that are large.</summary>
public sealed class LongNamesTests
{
    private const string SixtyLetters = "Sitzkissenbezugsstoffmusterverwaltungsnummernkreiszuordnungs";

    [Theory]
    [InlineData(SixtyLetters)]
    [InlineData("כרית ישיבה לספסל הקריאה שליד החלון הדרומי בספרייה העירונית")]
    [InlineData("وسادة مقعد القراءة بجانب النافذة الجنوبية في مكتبة المدينة")]
    [InlineData("The bench cushion under the long south window of the library")]
    public void Every_line_stays_on_its_page(string name)
    {
        Job job = Printed.Of(Order(name, 1));
        foreach (Sheet sheet in (Sheet[])[Ticket.Of(job), CutSheet.Of(job), ProjectSheet.Of(job, ShopDetails.None, null)])
        {
            foreach ((string drawing, Spot size) in SheetPages.Of(sheet, CancellationToken.None).Drawn)
            {
                // Drawings within the page are moved and scaled; they keep to their own frames, and have tests of their own.
                IEnumerable<XElement> lines = XElement
                    .Parse(drawing)
                    .Descendants()
                    .Where(element =>
                        element.Name.LocalName == "text" && element.Ancestors().All(one => one.Attribute("transform") is null)
                    );
                Assert.All(lines, line => Assert.InRange(EndOf(line), 0, size.X));
            }
        }
    }

    [Theory]
    [InlineData("Hem the upper edge of the strip twice by 1/2 in, and stitch the hem.")]
    [InlineData("a")]
    [InlineData("one " + SixtyLetters + " two")]
    public void A_line_is_broken_between_words_unless_one_word_is_wider(string text)
    {
        foreach (double width in (double[])[6, 11, 40])
        {
            IReadOnlyList<TextLine> lines = LineBreaks.Of([new Run(text)], width);
            Assert.All(lines, line => Assert.True(line.Width <= width + 1e-9));
            string[] words = [.. lines.SelectMany(line => line.Parts).SelectMany(part => part.Run.Text.Split(' '))];
            Assert.Equal(text.Replace(" ", "", StringComparison.Ordinal), string.Concat(words));
            string[] whole = [.. text.Split(' ').Where(word => LetterWidth.Of(word) <= width)];
            Assert.Empty(whole.Except(words));
        }
    }

    [Fact]
    public void No_heading_and_no_single_row_is_alone_on_a_page()
    {
        for (int rows = 2; rows < 90; rows++)
        {
            var table = new Table(
                "Pieces",
                [new Column("No."), new Column("Piece")],
                [.. Enumerable.Range(1, rows).Select(i => Row.Of("why", $"{i}", "top"))]
            );
            var setter = new BlockSetter(new TextSetter(3, "#111111"));
            IReadOnlyList<Slab> slabs = setter.Set([new Heading("Cut", 2), table], 180);
            foreach (IReadOnlyList<(Slab Slab, double At)> page in PageFill.Of(slabs, 120))
            {
                Assert.False(page[^1].Slab.KeepsNext && page[^1].Slab != slabs[^1], $"{rows} rows");
                Assert.True(page.Count(one => one.Slab.Head is not null) >= 2, $"{rows} rows");
                Assert.All(page, one => Assert.True(one.At + one.Slab.Height <= 120 + 1e-9));
            }
        }
    }

    [Fact]
    public void A_thousand_pieces_are_printed_within_the_bound_or_refused_with_the_reason()
    {
        Job job = Printed.Of(Order("seat", 120));
        Assert.InRange(job.Quote.Pieces.Count, 800, 2000);
        foreach (Sheet sheet in (Sheet[])[Ticket.Of(job), ProjectSheet.Of(job, ShopDetails.None, null), CutSheet.Of(job)])
        {
            foreach (bool asPdf in (bool[])[true, false])
            {
                PrintedDocument document = SheetDocument.Write(sheet, asPdf, CancellationToken.None);
                Assert.True(
                    document.Refused is { Code: "too-many-sheets" or "document-too-long" }
                        || document.Bytes.Length is > 0 and <= PrintedDocument.MostBytes
                );
            }
        }
    }

    private static double EndOf(XElement line)
    {
        double width = LetterWidth.Of(line.Value, line.Attribute("font-weight") is not null) * ParsedDrawing.Number(line, "font-size");
        double x = ParsedDrawing.Number(line, "x");
        return line.Attribute("text-anchor")!.Value == "end" ? x : x + width;
    }

    private static string Order(string name, int cushions)
    {
        IEnumerable<string> all = Enumerable
            .Range(1, cushions)
            .Select(i =>
                $$"""
                    { "id": "c{{i}}", "label": "{{name}}", "construction": "boxed",
                      "outline": { "kind": "rectangle", "width": {{400 + i}}, "depth": 380 },
                      "thickness": 60, "boxing": { "joins": "corners" }, "closure": { "kind": "zipper", "side": "back" },
                      "fabrics": { "top": "main" } }
                    """
            );
        return $$"""
            { "reference": "terrace", "units": "mm", "effort": "quick", "cushions": [{{string.Join(',', all)}}],
              "fabrics": [{ "id": "main", "label": "{{name}}", "width": 1400, "sold": { "unit": "m", "step": 0.1 } }] }
            """;
    }
}
