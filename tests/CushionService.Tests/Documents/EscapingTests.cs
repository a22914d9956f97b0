using System.Xml.Linq;
using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Documents;
using CushionService.Documents.CutSheets;
using CushionService.Documents.Drawings;
using CushionService.Documents.Projects;
using CushionService.Documents.Sheets;
using CushionService.Documents.TrueSize;
using CushionService.Tests.Documents.TrueSize;

namespace CushionService.Tests.Documents;

/// <summary>Names and sentences come from callers; none of them may become markup, style or script.</summary>
public sealed class EscapingTests
{
    public static TheoryData<string> Hostile =>
        [
            "<script>alert(1)</script>",
            "\"><img src=x onerror=alert(1)>",
            "'\" onload='alert(1)",
            "</title></svg></style><script>alert(1)</script>",
            "]]>&lt;script&gt;&#60;script>",
            "\0\u0001\u0008\u001B[31m\u007F\u0085\uFFFE\uFFFF\uD800",
            "\u202Egnp.exe\u2066\u2028",
            "\"; } body { background: url(https://example.org) } @import \"x",
            "\\\"\\3C /style>\nline\ttab",
        ];

    [Theory]
    [MemberData(nameof(Hostile))]
    public void Drawings_stay_well_formed_and_carry_the_text_as_text(string text)
    {
        (QuoteAnswer quote, PieceAnswer piece) = Order(text);
        string expected = PrintableText.Of(text);
        foreach (
            string svg in (string[])
                [
                    LayoutDrawing.Draw(quote.Layouts[0], quote.Pieces, quote.Units, quote.Yardage[0]),
                    PieceDrawing.Draw(piece, quote.Units),
                    .. PatternPages(text),
                ]
        )
        {
            XElement root = XElement.Parse(svg);
            Assert.All(root.DescendantsAndSelf(), element => Assert.Contains(element.Name.LocalName, Allowed));
            Assert.All(
                root.DescendantsAndSelf().Attributes(),
                attribute => Assert.False(attribute.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase))
            );
            Assert.Contains(
                root.DescendantNodesAndSelf().OfType<XText>(),
                node => node.Value.Contains(expected.Trim(), StringComparison.Ordinal) || node.Value.Contains('…', StringComparison.Ordinal)
            );
        }
    }

    [Theory]
    [MemberData(nameof(Hostile))]
    public void The_cut_sheet_has_the_same_elements_whatever_the_text(string text)
    {
        foreach (
            Func<Job, Sheet> sheet in (Func<Job, Sheet>[])
                [job => CutSheet.Of(job), job => Ticket.Of(job), job => ProjectSheet.Of(job, new ShopDetails(text, null, "#111111"), null)]
        )
        {
            SameElements(
                SheetHtml.Write(sheet(new Job(Order(text).Quote)), CancellationToken.None),
                SheetHtml.Write(sheet(new Job(Order("plain").Quote)), CancellationToken.None)
            );
        }
    }

    private static void SameElements(string hostile, string plain)
    {
        Assert.Equal(Tags(plain).Where(IsOfThePage), Tags(hostile).Where(IsOfThePage));
        Assert.DoesNotContain("<script", hostile, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<img", hostile, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain(hostile, letter => letter < ' ' && letter != '\n');
        Assert.DoesNotContain(hostile, char.IsSurrogate);
    }

    [Theory]
    [MemberData(nameof(Hostile))]
    public void The_foot_of_the_page_cannot_leave_its_string(string text) =>
        Assert.Matches(@"^""(?:[A-Za-z0-9]|\\[0-9A-F]{6})*""$", CssText.Quoted(text));

    [Fact]
    public void Letters_of_every_script_pass_unharmed() =>
        Assert.Equal("Größe 座布団 वस्त्र 🧵", PrintableText.Of("Größe 座布団 वस्त्र 🧵"));

    private static readonly string[] Allowed =
    [
        "svg",
        "title",
        "desc",
        "defs",
        "clipPath",
        "g",
        "rect",
        "polygon",
        "line",
        "circle",
        "path",
        "text",
    ];

    // Key and sheets of a round piece under that name.
    private static IEnumerable<string> PatternPages(string text)
    {
        PatternPiece round = Drafted.Pieces(Drafted.Order(Drafted.Disc))[0];
        PatternPiece[] pieces = [round with { Answer = round.Answer with { Id = text, Label = text, Fabric = text } }];
        IReadOnlyList<PatternSheet> sheets = PatternSheets.Of(pieces, Paper.A4);
        return
        [
            .. PatternKey.Draw("key", sheets, Paper.A4, new OrderUnits(Units.Mm)).Select(page => page.Drawing),
            .. sheets.Select(sheet => PatternDrawing.Draw(sheet, sheets.Count, new OrderUnits(Units.Mm))),
        ];
    }

    private static (QuoteAnswer Quote, PieceAnswer Piece) Order(string text)
    {
        QuoteAnswer quote = Scenarios.Pillow();
        PieceAnswer piece = quote.Pieces[0] with
        {
            Id = text,
            Because = text,
            Part = text,
            Points = [new(0, 0), new(430, 0), new(430, 430), new(0, 430)],
            Marks =
            [
                new MarkAnswer
                {
                    Kind = Engine.Patterns.Panels.MarkKind.Notch,
                    X = 215,
                    Y = 0,
                    Because = text,
                },
            ],
        };
        LayoutAnswer layout = quote.Layouts[0];
        return (
            quote with
            {
                Reference = text,
                Engine = text,
                Pieces = [piece, .. quote.Pieces.Skip(1)],
                Layouts =
                [
                    layout with
                    {
                        Fabric = text,
                        Placements = [.. layout.Placements.Select(at => at.Piece == "pillow/front" ? at with { Piece = text } : at)],
                    },
                ],
                Yardage = [quote.Yardage[0] with { Fabric = text, Because = text }],
                Materials = [.. quote.Materials.Select(material => material with { Item = text, Because = text })],
                Cost = new CostAnswer
                {
                    Currency = text,
                    Lines = [],
                    Labour =
                    [
                        new LabourLineAnswer
                        {
                            Cushion = text,
                            Operation = text,
                            Times = 1,
                            Minutes = 1,
                            Amount = text,
                        },
                    ],
                    Additions =
                    [
                        new CostAdditionAnswer
                        {
                            Kind = Engine.Costing.CostAdditionKind.Overhead,
                            Amount = text,
                            Because = text,
                        },
                    ],
                    Total = text,
                    BeforeTax = text,
                    Groups = [],
                    Shares =
                    [
                        new CostShareAnswer
                        {
                            Cushion = text,
                            Quantity = 1,
                            Amount = text,
                        },
                        new CostShareAnswer { Quantity = 1, Amount = text },
                    ],
                    Tax = text,
                    Unpriced = [text],
                },
                Steps =
                [
                    new StepAnswer
                    {
                        Number = 1,
                        Text = text,
                        Pieces = [text],
                    },
                ],
                Seams =
                [
                    new SeamAnswer
                    {
                        Cushion = text,
                        One = [text],
                        Other = [text],
                        Length = 1,
                        Lap = 0,
                    },
                ],
                Cautions = [new CautionAnswer(text, text)],
                Warnings = [new ViolationAnswer("", text, text)],
            },
            piece
        );
    }

    private static bool IsOfThePage(string tag) => tag is not ("line" or "text" or "/text" or "g" or "/g" or "polygon");

    private static IEnumerable<string> Tags(string html) =>
        html.Split('<').Skip(1).Select(tag => tag[..tag.IndexOfAny([' ', '>'])].TrimEnd('/'));
}
