using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Tests.Patterns;

/// <summary>A construction that the engine has never heard of is one file: this one.</summary>
public sealed class ToyConstructionFacts
{
    private const Construction Mat = (Construction)1000;

    [Fact]
    public void A_new_construction_is_found_drafted_cut_and_sewn_by_its_one_file()
    {
        OrderSpecification order = Order(KnifeEdge(40, 24, HandSewn) with { Construction = Mat });
        Drafting drafting = Drafting.Of(order, ConstructionRegistry.In(typeof(HemmedMat).Assembly));

        Assert.DoesNotContain(ConstructionRegistry.All, construction => construction is HemmedMat);
        Assert.Equal((In(42), In(26)), (drafting.Pieces.Single().Width, drafting.Pieces.Single().Length));
        Assert.Contains(
            Engine.Instructions.SewingOrder.Of(order, drafting.Patterns, drafting.Pieces),
            step => step.Text.ToString().Contains("stitch the hem", StringComparison.Ordinal)
        );
    }

    /// <summary>One sheet, hemmed all round.</summary>
    private sealed class HemmedMat : IConstruction
    {
        public ConstructionOffer Offer { get; } =
            new()
            {
                Kind = Mat,
                Description = new(
                    new MessageTemplate("toy.mat", [], [(Language.English, [MessagePart.Text("One sheet, hemmed all round.")])]),
                    []
                ),
                Outlines = [Engine.Specifications.Outlines.OutlineKind.Rectangle],
                Closures = [new(ClosureKind.HandSewn, [Side.Back])],
                Thickness = false,
            };

        public Pattern Draft(CushionSpecification cushion)
        {
            var hem = EdgeFinish.DoubleHem(cushion.SeamAllowance);
            return new Pattern(
                [
                    new Panel
                    {
                        Part = new PartName(PartKind.Main),
                        Role = FabricRole.Top,
                        Edges = PanelOutline.Rectangle(cushion.Width, cushion.Depth, hem, hem, hem, hem),
                    },
                ],
                []
            ).Closed();
        }
    }
}
