using System.Numerics;
using CushionService.Engine.Cutting;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Tests.Quoting;

/// <summary>What holds for every edging and addition with every closure, over 1 600 generated orders.</summary>
public sealed class TrimmedOrderFacts
{
    private const int Orders = 1600;
    private const int Quoted = 200;

    [Fact]
    public void Every_trimmed_cover_closes_and_its_welt_suffices_without_waste() =>
        Parallel.For(
            0,
            Orders,
            number =>
            {
                OrderSpecification order = TrimmedOrders.Order(number);
                try
                {
                    Drafting drafting = Drafting.Of(order);
                    for (var i = 0; i < order.Cushions.Length; i++)
                    {
                        Pattern pattern = drafting.Patterns[i];
                        Assert.Same(pattern, pattern.Closed());
                        Assert.All(pattern.Seams.Where(seam => seam.Fullness is not null), seam => GathersExactly(pattern, seam));
                        if (order.Cushions[i].Trim.Edging is WeltSpecification welt)
                        {
                            CutPiece piece = drafting.Pieces.Single(piece => piece.Welt is not null && piece.IsFor(order.Cushions[i].Id));
                            WeltSuffices(
                                [.. order.Cushions.Where(cushion => piece.IsFor(cushion.Id))],
                                welt,
                                piece,
                                order.Workroom.CuttingStep
                            );
                        }
                    }

                    Assert.All(
                        drafting.Pieces,
                        piece => Assert.True(piece.Width > Length.Zero && piece.Length > Length.Zero && piece.Quantity > 0, piece.Id)
                    );
                    Assert.All(drafting.Pieces, piece => Assert.NotEmpty(Derivation.Of(piece).ToString()));
                    Assert.All(drafting.Pieces, MarksLieOnThePiece);
                }
                catch (Exception fault)
                {
                    throw new InvalidOperationException($"Trimmed order {number}: {fault.Message}", fault);
                }
            }
        );

    [Fact]
    public void Trimmed_orders_are_quoted_and_their_layouts_hold() =>
        Parallel.For(
            0,
            Quoted,
            number =>
            {
                Drafting drafting = Drafting.Of(TrimmedOrders.Order(number));
                if (drafting.Violations.IsEmpty)
                {
                    Quote quote = QuotePipeline.Of(drafting, CancellationToken.None);
                    Assert.All(quote.Yardages, yardage => LayoutCheck.Passes(yardage.Layout, drafting));
                    Assert.All(quote.Materials, material => Assert.True(material.Quantity > 0, material.Because.ToString()));
                    string[] known = [.. drafting.Pieces.Select(piece => piece.Id)];
                    Assert.All(quote.Steps, step => Assert.All(step.Pieces, id => Assert.Contains(id, known)));
                }
            }
        );

    [Fact]
    public void Every_edging_meets_every_closure_of_both_constructions()
    {
        CushionSpecification[] cushions = [.. Enumerable.Range(0, Orders).SelectMany(number => TrimmedOrders.Order(number).Cushions)];
        var met = cushions
            .Select(cushion =>
                (
                    cushion.Construction,
                    cushion.Closure.Kind,
                    cushion.Trim.Edging?.GetType(),
                    (cushion.Trim.Edging as WeltSpecification)?.Cut
                )
            )
            .ToHashSet();

        // Nothing, a ruffle, and a welt cut three ways.
        Assert.Equal(2 * Enum.GetValues<ClosureKind>().Length * 5, met.Count);
    }

    // Sources.Derived: the gathered side is the fullness times the other, up to a nanometre, in whole numbers of any size.
    private static void GathersExactly(Pattern pattern, Seam seam)
    {
        BigInteger one = Sum(seam.One),
            other = Sum(seam.Other),
            numerator = (BigInteger)seam.Fullness!.Value.Numerator,
            denominator = (BigInteger)seam.Fullness.Value.Denominator;
        Assert.True(
            other * denominator >= one * numerator && (other - 1) * denominator < one * numerator,
            "The gathered side is not as full as stated."
        );

        BigInteger Sum(IEnumerable<EdgeRef> edges) =>
            edges.Aggregate(BigInteger.Zero, (sum, edge) => sum + pattern[edge.Part][edge.Edge].Length.Nanometres);
    }

    private static void WeltSuffices(CushionSpecification[] cushions, WeltSpecification welt, CutPiece piece, Length step)
    {
        double strip =
            Math.Ceiling(((Math.PI * welt.CordDiameter.Nanometres) + (2.0 * cushions[0].SeamAllowance.Nanometres)) / step.Nanometres)
            * step.Nanometres;
        // One lay for all, and a strip end to spare.
        double need =
            strip
            + cushions.Sum(cushion =>
                (double)cushion.Quantity
                * ((WeltSpecification)cushion.Trim.Edging!).At.Length
                * (cushion.Outline.Perimeter.RoundUpTo(In(0.0625m)) + In(2)).Nanometres
            );
        double noise = 1000;
        int pieces = piece.Quantity;
        if (!piece.Outline.IsEmpty)
        {
            // Whole strips: the block's height along the selvedge holds n of them.
            double across = piece.Width.Nanometres,
                along = (piece.Length - piece.Width).Nanometres,
                join = 0.5 * Math.Sqrt(2) * In(1).Nanometres;
            double Given(double n) => (n * across * Math.Sqrt(2)) - ((n - 1) * join);
            double strips = Math.Floor((along + noise) / (strip * Math.Sqrt(2)));
            Assert.True(Given(strips) + noise >= need && Given(strips - 1) < need + noise, "Whole strips do not meet the need.");
        }
        else if (welt.Cut == WeltCut.Bias)
        {
            double turns = Math.Floor((piece.Width.Nanometres - (0.5 * In(1).Nanometres) + noise) / (strip * Math.Sqrt(2)));
            double Given(double n) => (pieces * 2 * n * n * strip) - ((pieces - 1) * strip);
            Assert.True(Given(turns) + noise >= need && Given(turns - 1) < need + noise, "The continuous bias does not meet the need.");
            Assert.True(
                pieces * (double)piece.Width.Nanometres * piece.Length.Nanometres >= need * strip,
                "The squares are smaller than the strip."
            );
        }
        else
        {
            double each = Math.Max(piece.Width.Nanometres, piece.Length.Nanometres);
            double supplied = (pieces * each) - ((pieces - 1) * strip);
            Assert.True(supplied + noise >= need && supplied - need < each, "Straight strips do not meet the need.");
        }
    }

    private static void MarksLieOnThePiece(CutPiece piece) =>
        Assert.All(
            PieceMarks.Of(piece),
            mark =>
                Assert.True(
                    mark.From.X >= Length.Zero
                        && mark.From.Y >= Length.Zero
                        && mark.From.X <= piece.Width
                        && mark.From.Y <= piece.Length
                        && (
                            mark.To is not { } to
                            || (to.X >= Length.Zero && to.Y >= Length.Zero && to.X <= piece.Width && to.Y <= piece.Length)
                        ),
                    $"{piece.Id}: {mark.Because}"
                )
        );
}
