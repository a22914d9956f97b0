using CushionService.Nesting.Audit;

namespace CushionService.Nesting.Tests.Audit;

public sealed class StripAuditFacts
{
    [Fact]
    public void Published_optimal_layouts_pass()
    {
        StripAudit.Check(PublishedInstances.C1P1, PublishedInstances.C1P1Layout);
        StripAudit.Check(PublishedInstances.Scp1, PublishedInstances.Scp1Layout);
    }

    [Fact]
    public void Moving_any_piece_of_a_layout_without_waste_by_one_unit_is_found()
    {
        for (var index = 0; index < PublishedInstances.C1P1Layout.Placements.Length; index++)
        {
            foreach (var (dx, dy) in new[] { (1, 0), (-1, 0), (0, 1), (0, -1) })
            {
                var old = PublishedInstances.C1P1Layout.Placements[index];
                Refused(PublishedInstances.C1P1, Moved(index, old with { X = old.X + dx, Y = old.Y + dy }));
            }
        }
    }

    [Fact]
    public void A_piece_turned_against_its_rule_is_found() =>
        Refused(PublishedInstances.C1P1, Moved(5, PublishedInstances.C1P1Layout.Placements[5] with { Turn = 90 }), "turned");

    [Fact]
    public void A_copy_laid_twice_or_left_out_is_found()
    {
        var placements = PublishedInstances.C1P1Layout.Placements;
        Refused(PublishedInstances.C1P1, PublishedInstances.C1P1Layout with { Placements = placements.RemoveAt(3) }, "missing");
        Refused(PublishedInstances.C1P1, PublishedInstances.C1P1Layout with { Placements = placements.Add(placements[3]) }, "twice");
    }

    [Fact]
    public void A_copy_on_a_flaw_is_found()
    {
        var flawed = PublishedInstances.C1P1 with { Flaws = [new GridRectangle(19, 19, 5, 5)] };
        Refused(flawed, PublishedInstances.C1P1Layout, "flaw");
    }

    [Fact]
    public void A_copy_off_its_phase_of_a_half_drop_is_found()
    {
        var problem = new StripProblem
        {
            Width = 20,
            Pieces =
            [
                new NestingPiece
                {
                    Width = 3,
                    Length = 3,
                    Alignment = new Alignment(1, 2),
                },
            ],
            Repeat = new RepeatLattice(4, 6, 3),
        };
        StripAudit.Check(problem, At(5, 5));
        StripAudit.Check(problem, At(9, 2));
        Refused(problem, At(5, 2), "phase");
        Refused(problem, At(6, 5), "phase");
    }

    [Fact]
    public void A_length_or_a_bound_that_is_not_so_is_found()
    {
        Refused(PublishedInstances.C1P1, PublishedInstances.C1P1Layout with { Length = 21 }, "length");
        Refused(PublishedInstances.C1P1, PublishedInstances.C1P1Layout with { LowerBound = 21 }, "bound");
        Refused(PublishedInstances.C1P1, PublishedInstances.C1P1Layout with { LowerBound = 19 }, "minimal");
    }

    [Fact]
    public void Sale_steps_counted_one_by_one_agree_with_the_ladder()
    {
        // 1/8 yd of a fabric that shrinks by 7 %, in sixteenths of an inch, with a minimum sale that allowances partly eat.
        foreach (var sale in new[] { new SaleLadder(0, 18, 1, 1), new SaleLadder(-7, 72, 93, 100), new SaleLadder(300, 1, 1, 3) })
        {
            for (long length = 0; length < 900; length++)
            {
                var steps = 0L;
                while ((sale.First + steps * sale.Step) * sale.Numerator < length * sale.Denominator)
                {
                    steps++;
                }

                Assert.Equal(steps, SaleSteps.For(sale, length));
                Assert.Equal(steps, sale.RungFor(length));
            }
        }
    }

    [Theory]
    [InlineData(18, 19, false)]
    [InlineData(19, 36, true)]
    [InlineData(36, 36, true)]
    [InlineData(1, 18, true)]
    [InlineData(17, 37, false)]
    public void A_layout_is_minimal_only_when_its_bound_needs_as_many_sale_steps(long bound, long length, bool minimal)
    {
        var problem = new StripProblem
        {
            Width = 10,
            Pieces = [new NestingPiece { Width = 10, Length = length }],
            Sale = new SaleLadder(0, 18, 1, 1),
        };
        var layout = new StripLayout
        {
            Length = length,
            LowerBound = bound,
            ProvenMinimal = true,
            Proof = ProofKind.Area,
            Placements = [new Placement(0, 0, 0, 0, 0, 0)],
            Steps = 0,
        };
        if (minimal)
        {
            StripAudit.Check(problem, layout);
        }
        else
        {
            Refused(problem, layout, "minimal");
        }
    }

    private static StripLayout At(long x, long y) =>
        new()
        {
            Length = y + 3,
            LowerBound = 0,
            ProvenMinimal = false,
            Proof = ProofKind.None,
            Placements = [new Placement(0, 0, 0, x, y, 0)],
            Steps = 0,
        };

    private static StripLayout Moved(int index, Placement to) =>
        PublishedInstances.C1P1Layout with
        {
            Placements = PublishedInstances.C1P1Layout.Placements.SetItem(index, to),
        };

    private static void Refused(StripProblem problem, StripLayout layout, string word = "")
    {
        var refusal = Assert.Throws<LayoutAuditException>(() => StripAudit.Check(problem, layout));
        Assert.Contains(word, refusal.Message, StringComparison.OrdinalIgnoreCase);
    }
}
