using System.Globalization;
using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Documents;
using CushionService.Documents.CutSheets;
using CushionService.Documents.Drawings;
using CushionService.Documents.Sheets;
using CushionService.Documents.TrueSize;
using CushionService.Engine.Measures;
using CushionService.Tests.Documents.TrueSize;

namespace CushionService.Tests.Documents;

public sealed class CutSheetTests
{
    [Fact]
    public void It_refers_to_nothing_outside_itself()
    {
        foreach ((string _, QuoteAnswer quote) in Scenarios.All)
        {
            string html = Written(quote).Replace("http://www.w3.org/2000/svg", "", StringComparison.Ordinal);
            foreach (string reference in (string[])["http:", "https:", "src=", "href=", "<script", "<link", "@import", "javascript:"])
            {
                Assert.DoesNotContain(reference, html, StringComparison.OrdinalIgnoreCase);
            }
        }
    }

    [Fact]
    public void It_holds_every_piece_step_caution_and_warning()
    {
        QuoteAnswer nook = Scenarios.Nook();
        string html = Written(nook);
        Assert.All(nook.Pieces, piece => Assert.Contains($"<th scope=\"row\">{piece.Id}</th>", html, StringComparison.Ordinal));
        Assert.All(nook.Steps, step => Assert.Contains(step.Text, html, StringComparison.Ordinal));
        Assert.All(nook.Cautions, caution => Assert.Contains(caution.Text, html, StringComparison.Ordinal));
        Assert.All(nook.Warnings, warning => Assert.Contains(warning.Detail, html, StringComparison.Ordinal));
        Assert.Contains("tax excluded", html, StringComparison.Ordinal);
        Assert.Contains("for want of a price: thread", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Ids_are_unique_in_the_document()
    {
        string[] ids =
        [
            .. Written(Scenarios.Terrace()).Split(" id=\"").Skip(1).Select(rest => rest[..rest.IndexOf('"', StringComparison.Ordinal)]),
        ];
        Assert.NotEmpty(ids);
        Assert.Equal(ids.Length, ids.Distinct().Count());
    }

    [Fact]
    public void Paper_follows_the_units_unless_it_is_asked_for()
    {
        Assert.Contains("size: letter;", Written(Scenarios.Nook()), StringComparison.Ordinal);
        Assert.Contains("size: A4;", Written(Scenarios.Terrace()), StringComparison.Ordinal);
        Assert.Contains("size: A4;", Written(Scenarios.Nook(), Paper.A4), StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_quote_gives_the_same_bytes_in_any_culture()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        IReadOnlyList<(string Name, QuoteAnswer Quote)> scenarios = Scenarios.All;
        IReadOnlyList<PatternPiece> round = [Drafted.Pieces(Drafted.Order(Drafted.Disc))[0]];
        string[] invariant = Documents();
        try
        {
            var strange = (CultureInfo)CultureInfo.InvariantCulture.Clone();
            strange.NumberFormat.NumberDecimalSeparator = ",";
            strange.NumberFormat.NegativeSign = "minus";
            CultureInfo.CurrentCulture = strange;
            Assert.Equal(invariant, Documents());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        string[] Documents() =>
            [
                .. scenarios.Select(scenario => Written(scenario.Quote)),
                .. Scenarios.Nook().Pieces.Select(piece => PieceDrawing.Draw(piece, Units.In)),
                .. PatternSheets.Of(round, Paper.Letter).Select(sheet => PatternDrawing.Draw(sheet, 1, new OrderUnits(Units.Mm))),
            ];
    }

    private static string Written(QuoteAnswer quote, Paper? paper = null) =>
        SheetHtml.Write(CutSheet.Of(new Job(quote), paper), CancellationToken.None);

    [Theory]
    [InlineData(Units.In, 15.5, "15 1/2 in")]
    [InlineData(Units.In, 7.984375, "7 63/64 in")] // 1/64 is the finest binary division of a workroom's rule
    [InlineData(Units.In, 10.1, "10 1/8 in")]
    [InlineData(Units.In, 21.0001, "21 in")]
    [InlineData(Units.In, 7.1099, "7 1/8 in")]
    [InlineData(Units.Cm, 38.5, "38.5 cm")]
    [InlineData(Units.Cm, 22.04876, "22 cm")]
    [InlineData(Units.Mm, 385, "385 mm")]
    public void Lengths_print_as_the_order_measures(Units units, double length, string text) =>
        Assert.Equal(text, new OrderUnits(units).Text(length).Replace('\u00A0', ' '));

    [Theory]
    [InlineData(1.625, SaleUnit.Yd, "1 5/8 yd", "1.5 m")] // 1 yd is exactly 0.9144 m: 1.4859 m, up to the next 5 cm
    [InlineData(1.5, SaleUnit.M, "1 3/4 yd", "1.5 m")] // 1.64042 yd, up to the next eighth
    [InlineData(2, SaleUnit.Each, null, null)]
    public void Fabric_is_bought_by_the_yard_and_the_metre_side_by_side(double quantity, SaleUnit unit, string? yards, string? metres)
    {
        Assert.Equal(yards, SaleText.As(LengthUnit.Yard, quantity, unit)?.Replace('\u00A0', ' '));
        Assert.Equal(metres, SaleText.As(LengthUnit.Metre, quantity, unit)?.Replace('\u00A0', ' '));
    }
}
