using CushionService.Nesting.Solving;

namespace CushionService.Nesting.Tests.Rectangles;

public sealed class PublishedOptimumFacts
{
    [Fact]
    public void C1P1_of_Hopper_and_Turton_is_laid_at_its_exact_optimum_of_20() => Reaches(PublishedInstances.C1P1, 20);

    [Fact]
    public void Scp1_of_Hifi_is_laid_at_its_exact_optimum_of_13() => Reaches(PublishedInstances.Scp1, 13);

    private static void Reaches(StripProblem problem, long optimum)
    {
        var layout = Nester.Nest(problem, Effort.Standard);
        Assert.Equal(optimum, layout.Length);
        Assert.Equal(optimum, layout.LowerBound);
        Assert.True(layout.ProvenMinimal);
    }
}
