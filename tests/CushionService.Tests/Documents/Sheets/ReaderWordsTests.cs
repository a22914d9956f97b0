using System.Text.Encodings.Web;
using System.Text.Unicode;
using CushionService.Documents.CutSheets;
using CushionService.Documents.Projects;
using CushionService.Engine.Messages;

namespace CushionService.Tests.Documents.Sheets;

/// <summary>Lists name things as the steps do, in the reader's words.</summary>
public sealed class ReaderWordsTests
{
    private static readonly HtmlEncoder Encoder = HtmlEncoder.Create(UnicodeRanges.All);

    [Theory]
    [InlineData(Language.German, "Verschlussstreifen oben", "Klettband")]
    [InlineData(Language.French, "bande de fermeture supérieure", "ruban auto-agrippant")]
    [InlineData(Language.Spanish, "tira de cierre superior", "cinta de gancho y bucle")]
    public void Pieces_and_goods_are_named_in_the_readers_language(Language language, string part, string tape)
    {
        Job job = Printed.Demo("floor-cushion-metric", language);
        string html = Printed.Html(ProjectSheet.Of(job, ShopDetails.None, null));

        Assert.Equal(part, job.PartOf(job.Quote.Pieces.First(piece => piece.Part == "closure-upper")));
        Assert.Contains(Encoder.Encode(tape), html, StringComparison.Ordinal);
        Assert.DoesNotContain(">closure-upper<", html, StringComparison.Ordinal);
        Assert.DoesNotContain("hook-and-loop-tape", html, StringComparison.Ordinal);
    }

    // A day as the country writes it (CLDR, the short date with four digits of the year).
    [Theory]
    [InlineData(Language.English, "2027-03-01")]
    [InlineData(Language.German, "01.03.2027")]
    [InlineData(Language.French, "01/03/2027")]
    [InlineData(Language.Spanish, "01/03/2027")]
    public void The_day_that_work_is_due_is_written_as_the_reader_writes_days(Language language, string day)
    {
        Job job = Printed.Of(
            """
            { "due": "2027-03-01", "units": "cm",
              "cushions": [{ "id": "seat", "construction": "knife-edge", "outline": { "kind": "rectangle", "width": 45, "depth": 45 },
                "closure": { "kind": "zipper" }, "fabrics": { "top": "linen" } }],
              "fabrics": [{ "id": "linen", "width": 140, "sold": { "unit": "m", "step": 0.1 } }] }
            """,
            language
        );

        Assert.Equal(day, job.Due);
        Assert.Contains(Encoder.Encode(day), Printed.Html(Ticket.Of(job)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Language.English, "or no time: Undyed linen, zipper, thread.")]
    [InlineData(Language.German, "oder keine Zeit hat: Undyed linen, Reißverschluss, Garn.")]
    public void What_has_no_price_is_named_as_the_lists_of_the_sheet_name_it(Language language, string said)
    {
        Job job = Printed.Of(
            """
            { "units": "cm", "currency": "EUR",
              "cushions": [{ "id": "seat", "construction": "knife-edge", "outline": { "kind": "rectangle", "width": 45, "depth": 45 },
                "closure": { "kind": "zipper" }, "fabrics": { "top": "main" } }],
              "fabrics": [{ "id": "main", "label": "Undyed linen", "width": 140, "sold": { "unit": "m", "step": 0.1 } }] }
            """,
            language
        );

        Assert.Contains(Encoder.Encode(said), Printed.Html(Ticket.Of(job)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_cover_that_is_sewn_shut_is_not_checked_for_a_closure_that_opens()
    {
        const string Opens = "The closure opens and closes";
        Assert.Contains(Opens, Sheet("zipper"), StringComparison.Ordinal);
        Assert.DoesNotContain(Opens, Sheet("hand-sewn"), StringComparison.Ordinal);

        static string Sheet(string closure) =>
            Printed.Html(
                ProjectSheet.Of(
                    Printed.Of(
                        $$"""
                        { "units": "in",
                          "cushions": [{ "id": "seat", "construction": "knife-edge",
                            "outline": { "kind": "rectangle", "width": 18, "depth": 18 },
                            "closure": { "kind": "{{closure}}" }, "fabrics": { "top": "linen" } }],
                          "fabrics": [{ "id": "linen", "width": 54, "sold": { "unit": "yd", "step": "1/8" } }] }
                        """
                    ),
                    ShopDetails.None,
                    null
                )
            );
    }
}
