using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Engine.Costing;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Tests.Documents;

/// <summary>The quote round the pieces of a scenario: laid on shelves, sold, costed, marked and sewn with figures of its own.</summary>
internal static class ScenarioQuote
{
    /// <summary>A whole quote of some pieces.</summary>
    public static QuoteAnswer Of(string? reference, Units units, PieceAnswer[] pieces, (string Id, double Width, SaleUnit Unit)[] fabrics)
    {
        LayoutAnswer[] layouts =
        [
            .. fabrics.Select(fabric => Shelves.Lay(fabric.Id, fabric.Width, pieces.Where(piece => piece.Fabric == fabric.Id))),
        ];
        YardageLine[] yardage =
        [
            .. layouts.Zip(
                fabrics,
                (layout, fabric) =>
                    new YardageLine
                    {
                        Fabric = layout.Fabric,
                        LayoutLength = layout.Length,
                        SoldLength =
                            fabric.Unit == SaleUnit.Yd
                                ? Math.Ceiling(layout.Length / 4.5) / 8
                                : Math.Ceiling(layout.Length / (units == Units.Cm ? 10 : 100)) / 10,
                        SoldUnit = fabric.Unit,
                        ProvenMinimal = layout.ProvenMinimal,
                        Remnants = [],
                        Waste = 0,
                        Because = "as laid out, up to the next step of the shop",
                    }
            ),
        ];
        return new QuoteAnswer
        {
            Tools = [],
            Reference = reference,
            Units = units,
            Engine = "1.0.0",
            Cushions = [],
            Pieces = pieces,
            Layouts = layouts,
            Yardage = yardage,
            Seams =
            [
                new SeamAnswer
                {
                    Cushion = pieces[0].Cushion!,
                    One = ["top.front"],
                    Other = ["boxing.top"],
                    Length = pieces[0].Width,
                    Lap = 0,
                },
            ],
            Materials =
            [
                .. yardage.Select(line => new MaterialAnswer
                {
                    Cuts = [],
                    Item = line.Fabric,
                    Kind = MaterialKind.Fabric,
                    Quantity = line.SoldLength,
                    Unit = line.SoldUnit,
                    Because = line.Because,
                }),
                new MaterialAnswer
                {
                    Cuts = [],
                    Item = "foam-3",
                    Kind = MaterialKind.Foam,
                    Quantity = 1,
                    Unit = SaleUnit.Each,
                    Because = "cut to the finished size, a little over",
                },
                new MaterialAnswer
                {
                    Cuts = [],
                    Item = "zipper-chain",
                    Kind = MaterialKind.Zipper,
                    Quantity = 1.25,
                    Unit = SaleUnit.Yd,
                    Because = "44 in of opening, up to the next 1/8 yd",
                },
                new MaterialAnswer
                {
                    Cuts = [],
                    Item = "thread",
                    Kind = MaterialKind.Thread,
                    Quantity = 1,
                    Unit = SaleUnit.Each,
                    Because = "every seam twice",
                },
            ],
            Cost = new CostAnswer
            {
                Currency = units == Units.In ? "USD" : "EUR",
                BeforeTax = "80.00",
                Groups = [],
                Lines =
                [
                    .. yardage.Select(line => new CostLineAnswer
                    {
                        Item = line.Fabric,
                        Quantity = line.SoldLength,
                        Unit = line.SoldUnit,
                        UnitPrice = "18.90",
                        Amount = (18.90m * (decimal)line.SoldLength).ToString("0.00"),
                    }),
                ],
                Labour =
                [
                    new LabourLineAnswer
                    {
                        Cushion = pieces[0].Cushion!,
                        Operation = "boxed",
                        Times = 1,
                        Minutes = 72.5,
                        Amount = "36.25",
                    },
                ],
                Additions =
                [
                    new CostAdditionAnswer
                    {
                        Kind = CostAdditionKind.Markup,
                        Amount = "18.13",
                        Because = "50 % on the cost",
                    },
                ],
                Shares = [],
                Total = yardage.Sum(line => Math.Round(18.90m * (decimal)line.SoldLength, 2)).ToString("0.00"),
                Tax = "excluded",
                Unpriced = ["thread"],
            },
            Steps =
            [
                .. new[]
                {
                    "Wash and press the fabric as it will be washed later.",
                    "Square up one end.",
                    "Cut the pieces.",
                    "Mark them.",
                    "Sew the boxing to a loop and test it against the faces.",
                    "Sew the first face.",
                    "Open the zipper; sew the second face.",
                    "Turn, press, fill.",
                }.Select(
                    (text, i) =>
                        new StepAnswer
                        {
                            Number = i + 1,
                            Text = text,
                            Pieces =
                                i is 2 ? [.. pieces.Select(piece => piece.Id)]
                                : i is 4 or 5 ? [pieces[0].Id, pieces[^1].Id]
                                : [],
                        }
                ),
            ],
            Cautions =
            [
                new CautionAnswer(
                    "flammability",
                    "Fillings and covers burn. Ask for materials that meet the code where the cushion will be used, and follow it."
                ),
                new CautionAnswer("infants", "Never put cushions or pillows where an infant sleeps."),
                new CautionAnswer("blades", "Close the guard of a rotary cutter after each cut, and cut away from the body."),
            ],
            Warnings = [],
        };
    }
}
