using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Documents;
using CushionService.Documents.Labels;
using CushionService.Engine.Messages;
using CushionService.Tests.Documents.TrueSize;
using ZXing;
using ZXing.Common;

namespace CushionService.Tests.Documents.Labels;

/// <summary>Labels as they are printed, their codes read back by a reader of its own.</summary>
public sealed class LabelDocumentTests
{
    private const int Dots = 300;

    private static readonly PiecesAnswer Nook = new()
    {
        Reference = "nook-0147 für Łódź",
        Units = Units.In,
        Engine = "1.0.0",
        Cushions = [],
        Pieces = Scenarios.Nook().Pieces,
        Seams = [],
        Warnings = [],
    };

    [SkippableTheory]
    [InlineData("a4")]
    [InlineData("a4-large")]
    [InlineData("letter")]
    [InlineData("letter-large")]
    [InlineData("roll-62mm")]
    public void Every_code_on_a_sheet_reads_as_the_reference_the_piece_and_the_copy(string name)
    {
        Poppler.IsNeeded();

        LabelStock stock = LabelStock.Named(name)!;
        byte[] pdf = LabelDocument.Write(Nook, stock, Language.English, true, CancellationToken.None).Bytes;
        string[] expected =
        [
            .. Nook.Pieces.SelectMany(piece =>
                Enumerable.Range(1, piece.Quantity).Select(copy => PieceLabel.Content(Nook.Reference, piece, copy))
            ),
        ];
        var reader = new QRReader();
        GreyPage page = Poppler.Page(pdf, 1, Dots);
        for (int i = 0; i < Math.Min(stock.Count, expected.Length); i++)
        {
            (int row, int column) = Math.DivRem(i, stock.Columns);
            double left = stock.Left + column * (stock.Across + stock.Gap);
            Assert.Equal(
                expected[i],
                reader.Read(page, left + stock.Across / 2, stock.Top + row * stock.Down, stock.Across / 2, stock.Down)
            );
        }
    }

    [Fact]
    public void There_is_a_label_for_each_copy_and_too_many_are_refused()
    {
        int copies = Nook.Pieces.Sum(piece => piece.Quantity);
        string html = System.Text.Encoding.UTF8.GetString(
            LabelDocument.Write(Nook, LabelStock.Named("a4")!, Language.English, false, CancellationToken.None).Bytes
        );
        Assert.Equal(copies, html.Split("class=\"code\"").Length - 1);
        PiecesAnswer many = Nook with { Pieces = [Nook.Pieces[0] with { Quantity = LabelDocument.MostLabels + 1 }] };
        PrintedDocument refused = LabelDocument.Write(many, LabelStock.Named("a4")!, Language.English, true, CancellationToken.None);
        Assert.Equal("too-many-labels", refused.Refused!.Code);
    }

    [Theory]
    [InlineData("a4")]
    [InlineData("a4-large")]
    [InlineData("letter")]
    [InlineData("letter-large")]
    [InlineData("roll-62mm")]
    public void Labels_lie_on_their_sheet(string name)
    {
        LabelStock stock = LabelStock.Named(name)!;
        Assert.True(stock.Left >= -1e-9 && stock.Top >= -1e-9);
    }

    private sealed class QRReader
    {
        private readonly MultiFormatReader _reader = new();

        public string? Read(GreyPage page, double left, double top, double width, double height)
        {
            (byte[] dots, int across, int down) = page.Part(left, top, width, height);
            var source = new PlanarYUVLuminanceSource(dots, across, down, 0, 0, across, down, false);
            var hints = new Dictionary<DecodeHintType, object>
            {
                [DecodeHintType.POSSIBLE_FORMATS] = new List<BarcodeFormat> { BarcodeFormat.QR_CODE },
                [DecodeHintType.TRY_HARDER] = true,
                [DecodeHintType.CHARACTER_SET] = "UTF-8",
            };
            return _reader.decode(new BinaryBitmap(new HybridBinarizer(source)), hints)?.Text;
        }
    }
}
