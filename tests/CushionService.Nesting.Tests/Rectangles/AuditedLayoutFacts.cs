using CsCheck;
using CushionService.Nesting.Solving;

namespace CushionService.Nesting.Tests.Rectangles;

public sealed class AuditedLayoutFacts
{
    private static readonly Gen<NestingPiece> GenPiece = Gen.Select(
        Gen.Int[1, 40],
        Gen.Int[1, 40],
        Gen.Int[1, 4],
        Gen.Enum<Rotations>(),
        (width, length, quantity, turns) =>
            new NestingPiece
            {
                Width = width,
                Length = length,
                Quantity = quantity,
                Rotations = turns,
            }
    );

    [Fact]
    public void Every_layout_on_a_strip_passes_the_audit() =>
        Gen.Select(Gen.Int[40, 90], GenPiece.Array[1, 12])
            .Sample(
                (width, pieces) => Nester.Nest(new StripProblem { Width = width, Pieces = [.. pieces] }, Effort.Quick).Length > 0,
                seed: "0000000000001",
                iter: 200
            );

    [Fact]
    public void Every_layout_with_flaws_and_a_repeat_passes_the_audit() =>
        Gen.Select(Gen.Int[100, 150], GenPiece.Array[1, 6], Gen.Int[0, 9], Gen.Int[5, 20])
            .Sample(
                (width, pieces, across, along) =>
                    Nester
                        .Nest(
                            new StripProblem
                            {
                                Width = width,
                                Pieces =
                                [
                                    .. pieces.Select(
                                        (piece, index) =>
                                            index % 2 == 0
                                                ? piece with
                                                {
                                                    Rotations = Rotations.None,
                                                    Alignment = new Alignment(index, 2 * index),
                                                }
                                                : piece
                                    ),
                                ],
                                Repeat = new RepeatLattice(across, along, across == 0 ? 0 : along / 2),
                                Flaws = [new GridRectangle(-5, 10, 20, 3), new GridRectangle(60, 0, 1, 70)],
                            },
                            Effort.Quick
                        )
                        .Length > 0,
                seed: "0000000000001",
                iter: 50
            );

    [Fact]
    public void Every_layout_on_sheets_passes_the_audit() =>
        Gen.Select(GenPiece.Array[1, 12], Gen.Int[0, 3])
            .Sample(
                (pieces, small) =>
                    Nester
                        .Nest(
                            new SheetProblem { Pieces = [.. pieces], Sheets = [new(50, 60, null, 10), new(30, 40, small, 3)] },
                            Effort.Quick
                        )
                        .Unplaced.IsEmpty,
                seed: "0000000000001",
                iter: 100
            );
}
