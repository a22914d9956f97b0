using CushionService.Nesting.Solving;

namespace CushionService.Nesting.Tests.Rectangles;

public sealed class SheetFacts
{
    [Fact]
    public void Four_quarters_fill_one_sheet()
    {
        var layout = Nester.Nest(
            new SheetProblem
            {
                Pieces =
                [
                    new NestingPiece
                    {
                        Width = 12,
                        Length = 36,
                        Quantity = 4,
                    },
                ],
                Sheets = [new StockSheet(24, 72, null, 1)],
            },
            Effort.Quick
        );
        Assert.Equal(1, layout.Cost);
        Assert.Equal(1, layout.LowerBound);
        Assert.Empty(layout.Unplaced);
    }

    [Fact]
    public void An_offcut_that_costs_nothing_is_used_before_a_new_sheet()
    {
        var layout = Nester.Nest(
            new SheetProblem
            {
                Pieces =
                [
                    new NestingPiece
                    {
                        Width = 20,
                        Length = 20,
                        Rotations = Rotations.QuarterTurns,
                    },
                ],
                Sheets = [new StockSheet(24, 72, null, 40), new StockSheet(20, 21, 1, 0)],
            },
            Effort.Quick
        );
        Assert.Equal(1, Assert.Single(layout.Sheets));
        Assert.Equal(0, layout.Cost);
    }

    [Fact]
    public void A_copy_for_which_no_sheet_has_room_is_named()
    {
        var layout = Nester.Nest(
            new SheetProblem
            {
                Pieces =
                [
                    new NestingPiece
                    {
                        Width = 25,
                        Length = 10,
                        Quantity = 2,
                    },
                    new NestingPiece { Width = 10, Length = 10 },
                ],
                Sheets = [new StockSheet(24, 72, 3, 1)],
            },
            Effort.Quick
        );
        Assert.Equal([(0, 0), (0, 1)], layout.Unplaced.Order().ToArray());
        Assert.Single(layout.Placements);
    }
}
