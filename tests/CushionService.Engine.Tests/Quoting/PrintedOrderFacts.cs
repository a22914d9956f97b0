using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Nesting;

namespace CushionService.Engine.Tests.Quoting;

/// <summary>What holds for every order on printed fabric, over generated ones.</summary>
public sealed class PrintedOrderFacts
{
    private const int Orders = 400;
    private const int LaidAgain = 260;

    // Of the motif, in hundredths of the repeat.
    private static readonly (int Across, int Along)[] Positions = [(0, 0), (1, 99), (23, 61), (50, 50), (77, 34), (99, 1), (8, 45)];

    [Fact]
    public void Every_matched_piece_lies_on_its_phase_and_no_more_is_charged_than_is_matched() =>
        Every(
            Orders,
            (_, drafting) =>
            {
                foreach (Yardage yardage in QuotePipeline.LayOut(drafting, CancellationToken.None))
                {
                    FabricLayout layout = yardage.Layout;
                    LayoutCheck.Passes(layout, drafting);
                    Assert.All(
                        layout.Placements.Where(laid => MatchedAt.Of(layout.Fabric, laid.Piece) is { IsEverywhere: true }),
                        laid => Assert.True(laid.IsMatched, $"{laid.Piece.Id} is not matched.")
                    );
                    bool unknownAlong = layout.Fabric.Repeat!.IsUnknownAlong && layout.MotifX is not null;
                    Assert.Equal(unknownAlong ? layout.Fabric.Repeat.Length!.Value : Length.Zero, layout.Start);
                    Assert.True(layout.LowerBound <= layout.Length);
                    Assert.True(yardage.SoldAtBest is not { } best || best <= yardage.Sold);
                }
            }
        );

    [Fact]
    public void What_is_matched_in_part_or_not_at_all_is_said() =>
        Every(
            Orders,
            (_, drafting) =>
            {
                string[] said =
                [
                    .. drafting.Warnings.Where(warning => warning.Code == "not-matched").Select(warning => warning.Detail.ToString()),
                ];
                Assert.All(
                    drafting.Pieces.Where(piece =>
                        piece.Panel?.Match is not null
                        && drafting.Fabric(piece).Repeat is not null
                        && MatchedAt.Of(drafting.Fabric(piece), piece) is not { IsEverywhere: true }
                    ),
                    piece => Assert.Contains(said, sentence => sentence.StartsWith($"Piece {piece.Id} ", StringComparison.Ordinal))
                );
            }
        );

    /// <summary>With the motif known at a position, another for each order, no more is bought than was said to be enough for all.</summary>
    [Fact]
    public void What_is_bought_is_enough_wherever_the_motif_is() =>
        Every(
            Orders,
            (number, drafting) =>
            {
                (int across, int along) = Positions[number % Positions.Length];
                OrderSpecification known = PrintedOrders.At(drafting.Order, across, along) with { Effort = Effort.Standard };
                Drafting again = Drafting.Of(known);
                foreach (
                    (Yardage enough, Yardage needed) in QuotePipeline
                        .LayOut(drafting, CancellationToken.None)
                        .Zip(QuotePipeline.LayOut(again, CancellationToken.None))
                )
                {
                    LayoutCheck.Passes(needed.Layout, again);
                    Assert.True(needed.Sold <= enough.Sold, $"{needed.Because}, but {enough.Because}, {enough.Layout.ProofFigures}");
                }
            }
        );

    [Fact]
    public void A_proof_holds_at_the_position_that_is_worst()
    {
        // A position must exist at which nothing shorter was found either: the proof is of all of them together.
        int proven = 0;
        Every(
            LaidAgain,
            (_, drafting) =>
            {
                foreach (Yardage yardage in QuotePipeline.LayOut(drafting, CancellationToken.None).Where(one => one.Layout.ProvenMinimal))
                {
                    Interlocked.Increment(ref proven);
                    Length bound = FabricSale.Sold(yardage.Layout.Fabric, yardage.Layout.LowerBound, yardage.Layout.Start);
                    Assert.Equal(yardage.Sold, bound);
                }
            }
        );
        Assert.True(proven > 10, $"Only {proven} layouts are proven.");
    }

    private static void Every(int orders, Action<int, Drafting> holds) =>
        Parallel.For(
            0,
            orders,
            number =>
            {
                try
                {
                    Drafting drafting = Drafting.Of(PrintedOrders.Order(number));
                    if (drafting.Violations.IsEmpty)
                    {
                        holds(number, drafting);
                    }
                }
                catch (Exception fault)
                {
                    throw new InvalidOperationException($"Printed order {number}: {fault.Message}", fault);
                }
            }
        );
}
