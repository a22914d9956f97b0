using CushionService.Engine.Layouts;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Tests.Layouts;

/// <summary>What is sold does not depend on the order in which things were entered.</summary>
public sealed class PieceOrderFacts
{
    // Sources.Mathematics: the same set of pieces has the same shortest layout, so that one search of it has one answer.
    [Fact]
    public void The_order_of_pieces_changes_no_length()
    {
        for (var number = 0; number < 25; number++)
        {
            var random = new Random(number);
            LoosePieceSpecification[] pieces =
            [
                .. Enumerable.Range(0, 9).Select(i => Piece($"p{i}", random.Next(1, 3), random.Next(5, 40), random.Next(5, 40))),
            ];
            FabricLayout first = Laid(pieces),
                last = Laid([.. pieces.Reverse()]);
            random.Shuffle(pieces);
            FabricLayout mixed = Laid(pieces);

            Assert.Equal((number, first.Length, first.Length), (number, last.Length, mixed.Length));
            // Placements are listed as the pieces are.
            Assert.Equal(
                pieces.SelectMany(piece => Enumerable.Range(1, piece.Quantity).Select(copy => $"{piece.Id} {copy}")),
                mixed.Placements.Select(laid => $"{laid.Piece.Id} {laid.Copy}")
            );
        }
    }

    // Sources.Mathematics: the same. The grain is open, so that the ways that are tried for it must not depend on the order either.
    [Fact]
    public void The_order_of_cushions_changes_no_length()
    {
        CushionSpecification[] cushions =
        [
            KnifeEdge(57, 25, HandSewn) with
            {
                Id = "a",
                Quantity = 2,
            },
            KnifeEdge(17, 31, HandSewn) with
            {
                Id = "b",
                Quantity = 5,
            },
            KnifeEdge(38, 16, HandSewn) with
            {
                Id = "c",
            },
        ];
        OrderSpecification Ordered(params IEnumerable<CushionSpecification> cushions) =>
            Order(KnifeEdge(18, 18, HandSewn), Fabric with { Grain = Grain.Either }) with
            {
                Cushions = [.. cushions],
            };

        Assert.Single(
            new[] { (0, 1, 2), (0, 2, 1), (1, 0, 2), (1, 2, 0), (2, 0, 1), (2, 1, 0) }
                .Select(way => Quote(Ordered(cushions[way.Item1], cushions[way.Item2], cushions[way.Item3])).Yardages[0].Layout.Length)
                .Distinct()
        );
    }

    private static FabricLayout Laid(LoosePieceSpecification[] pieces) =>
        QuotePipeline.LayOut(Drafting.Of(Order(Fabric, pieces)), CancellationToken.None).Single().Layout;
}
