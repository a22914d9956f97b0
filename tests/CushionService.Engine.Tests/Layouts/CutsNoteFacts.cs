using CushionService.Engine.Layouts;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Tests.Layouts;

/// <summary>Fabric that comes in several cuts: one dye lot is asked for (common practice, no source).</summary>
public sealed class CutsNoteFacts
{
    // 95 runners of 54 x 19 in are 1805 in, 50.14 yd: more than a bolt of 50. 94 are 49.6 yd.
    [Theory]
    [InlineData(94, 0)]
    [InlineData(95, 1)]
    public void A_length_beyond_a_bolt_may_come_in_several_cuts(int runners, int notes)
    {
        LoosePieceSpecification runner = new("runner", "/pieces/0", "main", runners, In(54), In(19), null, []);
        Violation[] said = [.. CutsNote.Of(Trade.Quote(Order(Fabric, runner)).Yardages)];

        Assert.Equal(notes, said.Length);
        Assert.All(said, note => Assert.Equal("several-cuts", note.Code));
    }

    [Fact]
    public void Two_lengths_of_a_fabric_are_two_cuts()
    {
        Yardage length = Trade.Quote(Order(KnifeEdge(18, 18, HandSewn))).Yardages[0];

        Assert.Empty(CutsNote.Of([length]));
        Assert.Equal("several-cuts", CutsNote.Of([length, length]).Single().Code);
    }
}
