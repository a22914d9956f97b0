using System.Collections.Concurrent;
using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Tests.Patterns;

/// <summary>What holds for every construction, outline, closure, side and edging that are offered, over 6 000 generated cushions.</summary>
public sealed class OfferedCushionFacts
{
    private const int Cushions = 6000;

    internal static readonly FabricSpecification Wide = Fabric with { Width = In(118) };

    [Fact]
    public void Every_combination_closes_and_is_cut_no_smaller_than_its_outline_and_allowances()
    {
        var faults = new ConcurrentBag<string>();
        Parallel.For(
            0,
            Cushions,
            number =>
            {
                CushionSpecification cushion = OfferedCushions.Cushion(number);
                try
                {
                    Drafting drafting = Drafting.Of(Order(cushion, Wide));
                    Assert.Same(drafting.Patterns[0], drafting.Patterns[0].Closed());
                    foreach (CutPiece piece in drafting.Pieces)
                    {
                        CutAsItsPanel(piece, drafting.Order.Workroom.CuttingStep);
                        MarksLieWithin(piece);
                    }
                }
                catch (Exception fault)
                {
                    faults.Add(
                        $"Cushion {number},"
                            + $" {cushion.Construction} {cushion.Outline.Kind} {cushion.Closure} {cushion.Trim.Edging}: {fault.Message}"
                    );
                }
            }
        );
        Assert.True(faults.IsEmpty, string.Join(Environment.NewLine, faults.Order().Take(20).Prepend($"{faults.Count} cushions")));
    }

    [Fact]
    public void Every_combination_that_is_offered_is_among_them()
    {
        Assert.True(OfferedCushions.Combinations.Count < Cushions / 2);
        Assert.Equal(Enum.GetValues<Construction>(), OfferedCushions.Combinations.Select(combination => combination.Offer.Kind).Distinct());
        Assert.Equal(
            Enum.GetValues<OutlineKind>(),
            OfferedCushions.Combinations.Select(combination => combination.Outline).Distinct().Order()
        );
    }

    [Fact]
    public void The_steps_handle_every_piece_of_every_combination()
    {
        for (var number = 0; number < OfferedCushions.Combinations.Count; number++)
        {
            Drafting drafting = Drafting.Of(Order(OfferedCushions.Cushion(number), Wide));
            ImmutableArray<Engine.Instructions.Step> steps = Engine.Instructions.SewingOrder.Of(
                drafting.Order,
                drafting.Patterns,
                drafting.Pieces
            );

            Assert.Equal(
                drafting.Pieces.Select(piece => piece.Id).Order(),
                steps.Skip(1).SelectMany(step => step.Pieces).Distinct().Order()
            );
        }
    }

    // The oracle is another library's; it knows of no panel, only of points and distances.
    private static void CutAsItsPanel(CutPiece piece, Length step)
    {
        const double inch = 25_400_000;
        Panel panel = piece.Panel!;
        (double oracle, double bare) = BufferOracle.Of(piece);
        double cut = piece.Area.In(LengthUnit.Inch),
            slack = step.Nanometres / inch * 2 * (piece.Width + piece.Length).Nanometres / inch;
        double across = (panel.Width + panel.TakeUpAcross).Nanometres / inch,
            along = (panel.Height + panel.TakeUpAlong).Nanometres / inch;

        Assert.True(
            cut >= oracle - BufferOracle.SlackOf(piece) && cut <= oracle + slack,
            $"{piece.Id} is {cut} in², the oracle's {oracle}."
        );
        Assert.True(
            piece.Width.Nanometres / inch >= across && piece.Length.Nanometres / inch >= along,
            $"{piece.Id} is smaller than its panel."
        );
        Assert.True(bare < BufferOracle.SlackOf(piece), $"{piece.Id} does not cover its outline and allowances.");
    }

    private static void MarksLieWithin(CutPiece piece) =>
        Assert.All(
            PieceMarks.Of(piece),
            mark =>
            {
                Assert.InRange(mark.From.X.Nanometres, 0, piece.Width.Nanometres);
                Assert.InRange(mark.From.Y.Nanometres, 0, piece.Length.Nanometres);
            }
        );
}
