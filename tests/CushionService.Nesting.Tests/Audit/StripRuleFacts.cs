using System.Collections.Immutable;
using CushionService.Nesting.Audit;

namespace CushionService.Nesting.Tests.Audit;

/// <summary>Each rule of a strip layout, kept to the unit and broken by one.</summary>
public sealed class StripRuleFacts
{
    private static readonly NestingPiece Square = new() { Width = 10, Length = 10 };

    [Theory]
    [InlineData(0, 0, null)]
    [InlineData(20, 0, null)]
    [InlineData(20, 5, null)]
    [InlineData(-1, 0, "outside")]
    [InlineData(21, 0, "outside")]
    [InlineData(0, -1, "outside")]
    public void A_copy_lies_on_the_strip(long x, long y, string? fault) =>
        Judge(fault, new StripProblem { Width = 30, Pieces = [Square] }, x, y);

    [Theory]
    [InlineData(19, "outside")]
    [InlineData(20, null)]
    [InlineData(21, "the last piece ends at 20")]
    public void The_length_is_where_the_last_copy_ends(long length, string? fault)
    {
        var problem = new StripProblem { Width = 30, Pieces = [Square with { Quantity = 2 }] };
        Judge(fault, problem, Layout(length, new(0, 0, 0, 0, 10, 0), new(0, 1, 0, 12, 0, 0)));
    }

    [Theory]
    [InlineData(0, null)]
    [InlineData(1, "other than the strip")]
    [InlineData(-1, "other than the strip")]
    public void A_strip_is_the_only_sheet(int sheet, string? fault) =>
        Judge(fault, new StripProblem { Width = 30, Pieces = [Square] }, Layout(10, new Placement(0, 0, sheet, 0, 0, 0)));

    [Theory]
    [InlineData(15, 15, 5, 5, "flaw")]
    [InlineData(0, 10, 10, 10, null)]
    [InlineData(1, 10, 10, 10, "flaw")]
    [InlineData(20, 10, 10, 10, null)]
    [InlineData(19, 10, 10, 10, "flaw")]
    [InlineData(10, 0, 10, 10, null)]
    [InlineData(10, 1, 10, 10, "flaw")]
    [InlineData(10, 20, 10, 10, null)]
    [InlineData(10, 19, 10, 10, "flaw")]
    [InlineData(-50, -50, 200, 200, "flaw")]
    public void A_copy_may_touch_a_flaw_but_not_lie_on_it(long x, long y, long width, long length, string? fault)
    {
        // The copy covers 10 to 20 each way. Flaws may overlap each other.
        var problem = new StripProblem
        {
            Width = 30,
            Pieces = [Square],
            Flaws = [new GridRectangle(0, 25, 9, 9), new GridRectangle(0, 25, 9, 9), new GridRectangle(x, y, width, length)],
        };
        Judge(fault, problem, 10, 10);
        var outline = problem with { Pieces = [Square with { Outline = [new(0, 0), new(10, 0), new(10, 10), new(0, 10)] }] };
        Judge(fault, outline, Layout(20, new Placement(0, 0, 0, 10, 10, 0)), outlines: true);
    }

    [Fact]
    public void An_aligned_copy_lies_at_its_phase_plus_a_point_of_the_lattice()
    {
        // Points of the lattice by its definition, tried one by one: (i × width, j × length + i × drop).
        foreach (var lattice in new RepeatLattice[] { new(4, 6, 3), new(4, 6, 0), new(0, 5, 0), new(3, 7, 2) })
        {
            foreach (var phase in new Alignment[] { new(1, 2), new(-5, 9), new(7, -3) })
            {
                var piece = new NestingPiece
                {
                    Width = 2,
                    Length = 2,
                    Alignment = phase,
                };
                var problem = new StripProblem
                {
                    Width = 30,
                    Pieces = [piece],
                    Repeat = lattice,
                };
                for (var place = 0; place < 25 * 20; place++)
                {
                    long x = place % 25;
                    long y = place / 25;
                    bool onPoint = Enumerable
                        .Range(-30, 60)
                        .Any(i =>
                            (lattice.Width == 0 ? i == 0 : x == phase.PhaseX + i * lattice.Width)
                            && (y - phase.PhaseY - i * lattice.Drop) % lattice.Length == 0
                        );
                    Judge(onPoint ? null : "phase", problem, x, y);
                }
            }
        }
    }

    [Fact]
    public void A_sale_that_never_grows_reaches_no_layout_beyond_its_minimum()
    {
        var sale = new SaleLadder(10, 0, 1, 1);
        Assert.Equal(0, SaleSteps.For(sale, 10));
        Assert.Contains(
            "No number of sale steps",
            Assert.Throws<LayoutAuditException>(() => SaleSteps.For(sale, 11)).Message,
            StringComparison.Ordinal
        );
        Assert.Equal(long.MaxValue / 4 - 10, SaleSteps.For(sale with { Step = 1 }, long.MaxValue / 4));
    }

    private static void Judge(string? fault, StripProblem problem, long x, long y) =>
        Judge(fault, problem, Layout(y + problem.Pieces[0].Length, new Placement(0, 0, 0, x, y, 0)));

    private static void Judge(string? fault, StripProblem problem, StripLayout layout, bool outlines = false)
    {
        var thrown = Record.Exception(() =>
            (outlines ? (Action<StripProblem, StripLayout>)OutlineAudit.Check : StripAudit.Check)(problem, layout)
        );
        if (fault is null)
        {
            Assert.Null(thrown);
        }
        else
        {
            Assert.Contains(fault, Assert.IsType<LayoutAuditException>(thrown).Message, StringComparison.Ordinal);
        }
    }

    private static StripLayout Layout(long length, params ImmutableArray<Placement> placements) =>
        new()
        {
            Length = length,
            LowerBound = 0,
            ProvenMinimal = false,
            Proof = ProofKind.None,
            Placements = placements,
            Steps = 0,
        };
}
