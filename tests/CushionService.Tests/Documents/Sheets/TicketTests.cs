using System.Text.Encodings.Web;
using System.Text.Unicode;
using CushionService.Contract.Answers;
using CushionService.Documents;
using CushionService.Documents.CutSheets;
using CushionService.Documents.Projects;
using CushionService.Documents.Sheets;
using CushionService.Engine.Messages;
using CushionService.Tests.Documents.TrueSize;

namespace CushionService.Tests.Documents.Sheets;

/// <summary>The ticket of a job and the project sheet, as a workroom and a first-time sewer get them.</summary>
public sealed class TicketTests
{
    private static readonly HtmlEncoder Encoder = HtmlEncoder.Create(UnicodeRanges.All);

    public static TheoryData<string> Demos => Printed.Demos;

    // A page to buy by, at most a page to cut by for each layout and part of one, and for each cushion one page, or two where its
    // pieces, marks and steps are many.
    [Theory]
    [MemberData(nameof(Demos))]
    public void A_ticket_takes_a_page_or_two_for_each_cushion(string name)
    {
        Job job = Printed.Demo(name);
        int cutting = 1 + job.Quote.Layouts.Sum(layout => CushionService.Documents.Drawings.LayoutScale.For(layout).Bands(layout).Count);
        Assert.InRange(Printed.Pages(Ticket.Of(job)), 1, 2 + cutting + 2 * job.Quote.Cushions.Count);
    }

    [Fact]
    public void The_reading_nook_takes_eight_pages_at_most() =>
        Assert.InRange(Printed.Pages(Ticket.Of(Printed.Demo("reading-nook"))), 4, 8);

    [Theory]
    [InlineData("pillow")]
    [InlineData("priced-by-order")]
    [InlineData("floor-cushion-metric")]
    public void A_project_sheet_of_one_cushion_has_two_to_six_pages(string name) =>
        Assert.InRange(Printed.Pages(ProjectSheet.Of(Printed.Demo(name), ShopDetails.None, null)), 2, 6);

    [Theory]
    [MemberData(nameof(Demos))]
    public void Both_say_every_step_piece_and_caution(string name)
    {
        Job job = Printed.Demo(name);
        foreach (string html in (string[])[Printed.Html(Ticket.Of(job)), Printed.Html(ProjectSheet.Of(job, ShopDetails.None, null))])
        {
            Assert.All(job.Steps, step => Assert.Contains(Encoder.Encode(step.Text), html, StringComparison.Ordinal));
            Assert.All(job.Quote.Cautions, caution => Assert.Contains(Encoder.Encode(caution.Text), html, StringComparison.Ordinal));
            foreach (PieceAnswer piece in job.Quote.Pieces)
            {
                string size = OrderUnits.Unbroken(job.Units.Size(piece.Width, piece.Length));
                Assert.Contains(Encoder.Encode(size), html, StringComparison.Ordinal);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public void Every_step_has_a_lesson(string name) =>
        Assert.All(Printed.Demo(name).Steps, step => Assert.True(Lesson.Of(step.Key) is not null, step.Key));

    [Fact]
    public void A_ticket_says_where_each_piece_lies()
    {
        Job job = Printed.Demo("pillow");
        PlacementAnswer at = job.Quote.Layouts[0].Placements[0];
        Assert.Contains(
            Encoder.Encode($"Lies at {job.Units.Number(at.X)}, {job.Units.Text(at.Y)}"),
            Printed.Html(Ticket.Of(job)),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Lots_the_customers_own_fabric_charges_and_groups_are_where_they_belong()
    {
        string html = Printed.Html(
            Ticket.Of(
                Printed.Of(
                    """
                    { "reference": "terrace-7", "customer": "Library", "due": "2027-03-01", "note": "Deliver to the side door.",
                      "units": "cm", "currency": "EUR",
                      "cushions": [
                        { "id": "seat", "label": "Seat", "group": "Terrace", "construction": "boxed",
                          "outline": { "kind": "rectangle", "width": 50, "depth": 45 }, "thickness": 6,
                          "closure": { "kind": "zipper" }, "fabrics": { "top": "own" } },
                        { "id": "back", "construction": "knife-edge", "outline": { "kind": "rectangle", "width": 45, "depth": 45 },
                          "closure": { "kind": "envelope", "side": "bottom" }, "fabrics": { "top": "bought" } } ],
                      "fabrics": [
                        { "id": "own", "label": "Striped canvas", "width": 140, "customerOwned": true, "brought": 300, "lot": "K 12",
                          "sold": { "unit": "m", "step": 0.1 } },
                        { "id": "bought", "label": "Plain canvas", "width": 140, "sold": { "unit": "m", "step": 0.1 },
                          "price": { "amount": "14.00", "per": "m" } } ],
                      "costing": { "charges": [{ "label": "Collection", "amount": "12.00", "per": "order" }], "discount": { "percent": 10 },
                        "tax": { "label": "VAT", "rate": 0.19 } } }
                    """
                )
            )
        );
        string[] said =
        [
            "Library",
            "2027-03-01",
            "Deliver to the side door.",
            "The customer brings it: 300\u00A0cm.",
            "Dye lot K 12",
            "Terrace",
            "without a group",
            "Collection",
            "VAT",
            "tax included",
            "Left over:",
        ];
        Assert.All(said, text => Assert.Contains(Encoder.Encode(text), html, StringComparison.Ordinal));
    }

    [Fact]
    public void The_reader_gets_headings_and_numbers_in_the_language_asked_for()
    {
        string html = Printed.Html(Ticket.Of(Printed.Demo("floor-cushion-metric", Language.German)));
        Assert.Contains("lang=\"de\"", html, StringComparison.Ordinal);
        Assert.Contains("Was zu kaufen ist", html, StringComparison.Ordinal);
        Assert.DoesNotContain("What to buy", html, StringComparison.Ordinal);
    }

    [SkippableFact]
    public void The_pdf_is_searchable_and_the_same_every_time()
    {
        Poppler.IsNeeded();

        Sheet sheet = ProjectSheet.Of(
            Printed.Demo("pillow"),
            new ShopDetails("The Long Room", new Uri("https://shop.example/"), "#1F5A44"),
            null
        );
        byte[] pdf = Printed.Pdf(sheet);
        Assert.Equal(pdf, Printed.Pdf(sheet));
        string text = Poppler.Text(pdf);
        Assert.Contains("Turn the cover right side out", text, StringComparison.Ordinal);
        Assert.Contains("A project sheet by The Long Room", text, StringComparison.Ordinal);
    }
}
