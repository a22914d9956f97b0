using CushionService.Engine.Cutting;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Nesting;
using CushionService.Nesting.Solving;

namespace CushionService.Engine.Tests.Layouts;

/// <summary>Sizes that are no whole number of micrometres, such as 1/64 in.</summary>
public sealed class FineStepFacts
{
    [Fact]
    public void What_just_fits_beside_the_motif_is_not_made_wider_than_the_fabric()
    {
        // Sources.Mathematics: a face of 18 1/64 in is cut 19 1/64 in, 482.996 875 mm: up to 482.997 mm. Where the motif may move by all
        // that the fabric has beside it, what is left is just as wide, and down to 482.996 mm.
        FabricSpecification fabric = Fabric with
        {
            Repeat = new RepeatSpecification(null, Length.FromNanometres(157_683_201), DropKind.Straight),
        };
        var step = Length.FromNanometres(In(1).Nanometres / 64);
        OrderSpecification order = Order(KnifeEdge(18m + (1m / 64), 18, HandSewn) with { Quantity = 4 }, fabric);
        Drafting drafting = Drafting.Of(order with { Workroom = order.Workroom with { CuttingStep = step } });
        CutPiece face = drafting.Pieces[0];
        Length motif = face.AsLaid(face.Panel!.Match!.Value.Moved(face.Origin.X, face.Origin.Y)).X;
        var problem = new SpanProblem(fabric, drafting.Pieces, new MotifSpan(motif, fabric.UsableWidth - face.Across));

        Assert.Equal((482_996_875, 1000), (face.Across.Nanometres, problem.Grid.Unit));
        Assert.True(problem.IsMatched(0));
        StripLayout layout = Nester.Nest(problem.At(SaleGoal.Sold(fabric, Length.Zero)), Effort.Quick);
        Assert.Equal(8, layout.Placements.Length);
        Assert.All(layout.Placements, placed => Assert.Equal(0, placed.X));
    }
}
