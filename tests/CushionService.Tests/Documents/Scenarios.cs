using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Engine.Measures;
using CushionService.Nesting;
using static CushionService.Tests.Documents.ScenarioPieces;

namespace CushionService.Tests.Documents;

/// <summary>Quotes of three very different orders for the reading nook of a small library and its terrace. The figures are plausible,
/// and no results of the engine.</summary>
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
        return ScenarioQuote.Of("nook-0147", Units.In, pieces, [("stripe", 53.0, SaleUnit.Yd), ("plain", 44, SaleUnit.Yd)]) with
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
        return ScenarioQuote.Of("terrace-40", Units.Cm, pieces, [("canvas", 146.0, SaleUnit.M)]);
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
        return ScenarioQuote.Of(null, Units.Mm, pieces, [("linen", 1380, SaleUnit.M)]) with { Cost = null, Seams = [] };
    }
}
