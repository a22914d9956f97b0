using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Tests.Instructions;

/// <summary>How a cover is cleaned (common practice, no source).</summary>
public sealed class CareFacts
{
    private static readonly TrimSpecification Tufted = new()
    {
        Tufts = new TuftSpecification(2, 2, TuftGrid.Square, In(0.875m), false, In(0)),
    };

    [Fact]
    public void A_cover_that_is_tufted_comes_off_only_once_its_twine_is_cut()
    {
        Assert.EndsWith("to wash it, cut the twine and tuft it anew.", Care(Boxed(24, 22, 4, BackZipper)), StringComparison.Ordinal);
        Assert.EndsWith(
            "to wash it, cut the twine and unpick the gap, then sew it up and tuft it anew.",
            Care(Boxed(24, 22, 4, HandSewn)),
            StringComparison.Ordinal
        );
    }

    private static string Care(CushionSpecification cushion) =>
        Assert.Single(Engine.Instructions.Care.For(Order(cushion with { Trim = Tufted }))).ToString();
}
