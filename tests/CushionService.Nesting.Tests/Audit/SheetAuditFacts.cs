using CushionService.Nesting.Audit;

namespace CushionService.Nesting.Tests.Audit;

/// <summary>What a layout on sheets must keep, each rule broken by one unit or one copy.</summary>
public sealed class SheetAuditFacts
{
    // Two kinds of sheet: any number of 30 × 20, and two of 10 × 10. One piece that may turn, one that may not.
    private static readonly SheetProblem Problem = new()
    {
        Sheets = [new StockSheet(30, 20, null, 7), new StockSheet(10, 10, 2, 2)],
        Pieces =
        [
            new NestingPiece
            {
                Width = 20,
                Length = 10,
                Quantity = 2,
                Rotations = Rotations.QuarterTurns,
            },
            new NestingPiece { Width = 10, Length = 10 },
        ],
    };

    private static readonly SheetLayout Good = new()
    {
        Sheets = [0, 1],
        Cost = 9,
        LowerBound = 9,
        Placements = [new(0, 0, 0, 0, 0, 0), new(0, 1, 0, 20, 0, 90), new(1, 0, 1, 0, 0, 0)],
        Unplaced = [],
        Steps = 0,
    };

    [Fact]
    public void A_layout_that_fills_its_sheets_to_the_edges_passes() => SheetAudit.Check(Problem, Good);

    [Theory]
    [InlineData(-1, 0, "beyond the left edge")]
    [InlineData(11, 0, "beyond the right edge")]
    [InlineData(0, -1, "beyond the lower edge")]
    [InlineData(0, 11, "beyond the upper edge")]
    public void A_copy_that_sticks_out_of_its_sheet_by_one_unit_is_found(long x, long y, string _) =>
        Refused("outside", Moved(0, new(0, 0, 0, x, y, 0)));

    [Theory]
    [InlineData(-1)]
    [InlineData(2)]
    public void A_copy_on_a_sheet_that_is_not_used_is_found(int sheet) => Refused("no sheet", Moved(2, new(1, 0, sheet, 0, 0, 0)));

    [Fact]
    public void Copies_of_one_sheet_may_touch_but_not_overlap()
    {
        Refused("overlap on sheet 0", Moved(1, new(0, 1, 0, 19, 0, 90)));
        SheetAudit.Check(Problem, Moved(0, new(0, 0, 0, 0, 10, 0)));
    }

    [Fact]
    public void Copies_of_two_sheets_may_lie_at_the_same_place()
    {
        var twice = Good with
        {
            Sheets = [0, 1, 0],
            Cost = 16,
            Placements = [new(0, 0, 0, 0, 0, 0), new(0, 1, 2, 0, 0, 0), new(1, 0, 1, 0, 0, 0)],
        };
        SheetAudit.Check(Problem, twice);
    }

    [Fact]
    public void No_more_sheets_are_used_than_there_are()
    {
        SheetAudit.Check(Problem, Good with { Sheets = [0, 1, 1], Cost = 11 });
        Refused("More sheets of kind 1", Good with { Sheets = [0, 1, 1, 1], Cost = 13 });
        SheetAudit.Check(Problem, Good with { Sheets = [0, 1, 0, 0, 0], Cost = 30 });
    }

    [Fact]
    public void The_cost_is_that_of_the_sheets_used()
    {
        Refused("cost", Good with { Cost = 8, LowerBound = 8 });
        Refused("cost", Good with { Cost = 10 });
    }

    [Fact]
    public void The_bound_exceeds_the_cost_only_when_something_found_no_room()
    {
        Refused("bound", Good with { LowerBound = 10 });
        SheetAudit.Check(Problem, Good with { LowerBound = 8 });
        SheetAudit.Check(Problem, Good with { LowerBound = 10, Placements = Good.Placements.RemoveAt(2), Unplaced = [(1, 0)] });
    }

    [Fact]
    public void A_copy_is_laid_or_said_to_be_unplaced_but_not_both()
    {
        Refused("missing", Good with { Placements = Good.Placements.RemoveAt(2) });
        Refused("twice", Good with { Unplaced = [(1, 0)] });
        Refused("never demanded", Good with { Unplaced = [(2, 0)] });
    }

    private static SheetLayout Moved(int index, Placement to) => Good with { Placements = Good.Placements.SetItem(index, to) };

    private static void Refused(string word, SheetLayout layout) =>
        Assert.Contains(
            word,
            Assert.Throws<LayoutAuditException>(() => SheetAudit.Check(Problem, layout)).Message,
            StringComparison.Ordinal
        );
}
