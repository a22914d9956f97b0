using System.Collections.Immutable;
using CushionService.Nesting.Rectangles.Beams;
using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Tests.Rectangles;

public sealed class BoxBeamFacts
{
    private const long Width = 109;
    private const long Steps = 4_000_000;

    /// <summary>All extents are tens, so that 9 of 109 units across stay empty in every layout, which the area over the width does not
    /// know.</summary>
    private static readonly ImmutableArray<NestingPiece> Tens =
    [
        .. Enumerable.Range(0, 12).Select(index => new NestingPiece { Width = 10 * (2 + index % 5), Length = 10 * (3 + index * 5 % 7) }),
    ];

    [Fact]
    public void Beams_aimed_at_a_length_whose_whole_units_hold_less_than_the_area_end()
    {
        var set = new RectangleSet(Tens, Width);
        var budget = new StepBudget(Steps, CancellationToken.None);
        long byArea = (set.Area + Width - 1) / Width;
        long shortest = (set.Area / 100 + 9) / 10 * 10;
        Assert.True(byArea < shortest);

        Assert.False(new BoxBeams(set, SaleLadder.EveryUnit, budget).Improve(shortest, byArea, Steps));
    }
}
