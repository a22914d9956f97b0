using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Engine.Costing;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Stocks;
using CushionService.Nesting;

namespace CushionService.Tests.Documents;

/// <summary>Quotes of three very different orders for the reading nook of a small library and its terrace. The figures are plausible,
/// and stand for no result of the engine.</summary>
internal static class Scenarios
{
    public static IReadOnlyList<(string Name, QuoteAnswer Quote)> All => [("nook", Nook()), ("terrace", Terrace()), ("pillow", Pillow())];

    /// <summary>A bench, a round floor cushion and two pillows, in inches, on a one-way fabric and a plain one.</summary>
    public static QuoteAnswer Nook()
    {
        PieceAnswer[] pieces =
        [
            Piece(
                "bench/top",
                "stripe",
                1,
                45,
                19,
                Rotations.None,
                "44 in + 2 × 1/2 in seam by 18 in + 2 × 1/2 in seam",
                Notch(22.5, 0, "centre front"),
                Notch(22.5, 19, "centre back")
            ),
            Piece(
                "bench/bottom",
                "stripe",
                1,
                45,
                19,
                Rotations.None,
                "as the top",
                Notch(22.5, 0, "centre front"),
                Notch(22.5, 19, "centre back")
            ),
            Piece(
                "bench/front",
                "stripe",
                1,
                45,
                4,
                Rotations.None,
                "44 in + 2 × 1/2 in seam by 3 in + 2 × 1/2 in seam",
                Handle(18.25, "8 1/2 in between the sewn ends, 2 in down"),
                Handle(26.75, "8 1/2 in between the sewn ends, 2 in down"),
                Notch(22.5, 0, "centre front")
            ),
            Piece("bench/left", "stripe", 1, 19, 4, Rotations.None, "18 in + 2 × 1/2 in seam by 3 in + 2 × 1/2 in seam"),
            Piece("bench/right", "stripe", 1, 19, 4, Rotations.None, "as the left"),
            Piece(
                "bench/zipper-upper",
                "stripe",
                1,
                45,
                2.625,
                Rotations.None,
                "half of 3 in + 2 × 1/2 in seam + 2 × 5/8 in at the zipper"
            ),
            Piece("bench/zipper-lower", "stripe", 1, 45, 2.625, Rotations.None, "as the upper"),
            Piece(
                "bench/handle",
                "stripe",
                1,
                4,
                10.5,
                Rotations.None,
                "4 × 1 in, folded to the middle and again, by 9 in + 2 × 3/4 in",
                Fold(1),
                Fold(2),
                Fold(3)
            ),
            Round("floor/top", 25, 2),
            Piece(
                "floor/boxing",
                "plain",
                2,
                39.5,
                6,
                Rotations.HalfTurn,
                "half of 75 3/8 in round + 2 × 1/2 in seam, up to the next 1/8 in"
            ),
            Piece("pillow/front", "plain", 2, 17, 17, Rotations.QuarterTurns, "16 in + 2 × 1/2 in seam each way"),
            Piece(
                "pillow/back-upper",
                "plain",
                2,
                17,
                7.984375,
                Rotations.QuarterTurns,
                "16 in + 2 × 1/2 in seam by half, with the zipper's seam"
            ),
            Piece("pillow/back-lower", "plain", 2, 17, 10.1, Rotations.QuarterTurns, "the rest"),
            Piece("tab", "plain", 4, 2, 1.25, Rotations.QuarterTurns, "given"),
        ];
        return Quote("nook-0147", Units.In, pieces, [("stripe", 53.0, SaleUnit.Yd), ("plain", 44, SaleUnit.Yd)]) with
        {
            Seams =
            [
                new SeamAnswer
                {
                    Cushion = "bench",
                    One = ["top.front", "top.right", "top.back", "top.left"],
                    Other = ["front.top", "right.top", "zipper-upper.top", "left.top"],
                    Length = 124,
                    Lap = 0,
                },
                new SeamAnswer
                {
                    Cushion = "floor",
                    One = ["top.edge"],
                    Other = ["boxing.top"],
                    Length = 75.398,
                    Lap = 0,
                },
            ],
            Warnings =
            [
                new ViolationAnswer(
                    "/cushions/1/thickness",
                    "unwise",
                    "The foam of the floor cushion is thicker than its boxing is high: it will not close flat."
                ),
            ],
        };
    }

    /// <summary>Forty seats of one size and their backs for a terrace, in centimetres.</summary>
    public static QuoteAnswer Terrace()
    {
        PieceAnswer[] pieces =
        [
            Piece(
                "seat/top",
                "canvas",
                40,
                50.8,
                48.6,
                Rotations.HalfTurn,
                "48 cm + 2 × 1.4 cm seam by 45.8 cm + 2 × 1.4 cm seam",
                Notch(25.4, 0, "centre front")
            ),
            Piece("seat/bottom", "canvas", 40, 50.8, 48.6, Rotations.HalfTurn, "as the top", Notch(25.4, 0, "centre front")),
            Piece("seat/boxing", "canvas", 40, 141.2, 8.8, Rotations.HalfTurn, "front and sides round, 6 cm + 2 × 1.4 cm seam high"),
            Piece("seat/zipper-upper", "canvas", 40, 50.8, 5.4, Rotations.HalfTurn, "half of the boxing with the zipper's seam"),
            Piece("seat/zipper-lower", "canvas", 40, 50.8, 5.4, Rotations.HalfTurn, "as the upper"),
            Piece("seat/tie", "canvas", 80, 40, 2.5, Rotations.HalfTurn, "given"),
        ];
        return Quote("terrace-40", Units.Cm, pieces, [("canvas", 146.0, SaleUnit.M)]);
    }

    /// <summary>One pillow with an envelope back, in millimetres.</summary>
    public static QuoteAnswer Pillow()
    {
        PieceAnswer[] pieces =
        [
            Piece("pillow/front", "linen", 1, 430, 430, Rotations.None, "400 mm + 2 × 15 mm seam each way"),
            Piece("pillow/back-upper", "linen", 1, 430, 290, Rotations.None, "half, the overlap and a double hem"),
            Piece("pillow/back-lower", "linen", 1, 430, 290, Rotations.None, "as the upper"),
        ];
        return Quote(null, Units.Mm, pieces, [("linen", 1380, SaleUnit.M)]) with { Cost = null, Seams = [] };
    }

    public static PieceAnswer Piece(
        string id,
        string fabric,
        int quantity,
        double width,
        double length,
        Rotations rotation,
        string because,
        params MarkAnswer[] marks
    ) =>
        new()
        {
            Id = id,
            Cushion = id.Split('/')[0],
            Part = id.Split('/')[^1],
            Fabric = fabric,
            Quantity = quantity,
            Width = width,
            Length = length,
            Rotation = rotation,
            Grain = rotation == Rotations.QuarterTurns ? Grain.Either : Grain.UpTheBolt,
            Because = because,
            Marks = marks,
        };

    private static QuoteAnswer Quote(
        string? reference,
        Units units,
        PieceAnswer[] pieces,
        (string Id, double Width, SaleUnit Unit)[] fabrics
    )
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

    private static PieceAnswer Round(string id, double diameter, int quantity)
    {
        double radius = diameter / 2;
        PointAnswer[] points =
        [
            .. Enumerable
                .Range(0, 96)
                .Select(i => Math.PI * i / 48)
                .Select(angle => new PointAnswer(radius + radius * Math.Cos(angle), radius + radius * Math.Sin(angle))),
        ];
        MarkAnswer[] quarters =
        [
            Notch(radius, 0, "quarter"),
            Notch(diameter, radius, "quarter"),
            Notch(radius, diameter, "quarter"),
            Notch(0, radius, "quarter"),
        ];
        return Piece(id, "plain", quantity, diameter, diameter, Rotations.HalfTurn, "24 in across + 2 × 1/2 in seam", quarters) with
        {
            Points = points,
        };
    }

    private static MarkAnswer Notch(double x, double y, string because) =>
        new()
        {
            Kind = MarkKind.Notch,
            X = x,
            Y = y,
            Because = because,
        };

    private static MarkAnswer Handle(double x, string because) =>
        new()
        {
            Kind = MarkKind.HandleEnd,
            X = x,
            Y = 2,
            Because = because,
        };

    private static MarkAnswer Fold(double x) =>
        new()
        {
            Kind = MarkKind.FoldLine,
            X = x,
            Y = 0,
            ToX = x,
            ToY = 10.5,
            Because = "fold the strap",
        };
}
