using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Shapes;
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

    [Theory]
    [InlineData(Language.German, "links|linken Stoffseite")]
    [InlineData(Language.French, "par l’envers")]
    [InlineData(Language.Spanish, "por el revés")]
    public void Pile_is_steamed_from_the_back_in_every_language(Language language, string back)
    {
        WeltSpecification welt = new([EdgingPlace.Top], In(0.15625m), WeltCut.Bias);
        ZipperClosure lapped = BackZipper with { Return = Length.Zero, Lap = In(0.5m) };
        CushionSpecification[] cushions =
        [
            Boxed(24, 22, 4, BackZipper),
            Boxed(24, 22, 4, lapped),
            KnifeEdge(18, 18, lapped),
            KnifeEdge(18, 18, lapped with { Lap = Length.Zero }) with
            {
                Trim = new TrimSpecification { Edging = welt },
            },
            Boxed(20, 20, 4, HandSewn) with
            {
                Construction = Construction.Waterfall,
            },
        ];
        MessageWriter english = new(Language.English, LengthUnit.Inch),
            other = new(language, LengthUnit.Inch);
        foreach (CushionSpecification cushion in cushions)
        {
            Message[] steps = [.. Quote(Order(cushion, Fabric with { Pile = true })).Steps.Select(step => step.Text)];
            Message[] steamed = [.. steps.Where(step => english.Text(step).Contains("from the back", StringComparison.Ordinal))];

            Assert.NotEmpty(steamed);
            Assert.All(steamed, step => Assert.Matches(back, other.Text(step)));
        }
    }
}
