using System.Reflection;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Practices;

namespace CushionService.Engine.Tests.Specifications;

/// <summary>A workroom that measures in millimetres has figures of its own.</summary>
public sealed class MetricPracticeFacts
{
    private static readonly WorkroomPractice Metric = WorkroomPractice.Metric;

    public static TheoryData<string, Length, decimal> Usual() =>
        new()
        {
            { "seam", Metric.SeamAllowance, 15 },
            { "hem, each turn", Metric.HemFold, 10 },
            { "zipper turn-under", Metric.ZipperTurnUnder, 20 },
            { "edge-stitching", Metric.EdgeDistance, 3 },
            { "zipper guards", Metric.Closures.ZipperGuard, 25 },
            { "envelope of 40 cm", Metric.Closures.Envelope.Overlap(Length.FromMillimetres(400)), 100 },
            { "welt overlap", Metric.Trims.WeltOverlap, 50 },
            { "welt join", Metric.Trims.WeltJoin, 6 },
            { "handle end", Metric.Trims.HandleEndFold, 13 },
        };

    [Theory]
    [MemberData(nameof(Usual))]
    public void Metric_figures_are_those_of_metric_workrooms(string what, Length used, decimal millimetres)
    {
        // Sources.Practice
        Assert.NotEmpty(what);
        Assert.Equal(Length.FromMillimetres(millimetres), used);
    }

    [Fact]
    public void No_metric_figure_is_an_inch_converted()
    {
        (string Name, Length Length)[] lengths = [.. LengthsOf(Metric, "")];

        Assert.True(lengths.Length > 40, "The practice has fewer lengths than it had.");
        Assert.All(lengths, one => Assert.True(one.Length.Nanometres % 1_000_000 == 0, $"{one.Name}: {one.Length.Nanometres} nm"));
    }

    private static IEnumerable<(string Name, Length Length)> LengthsOf(object practice, string prefix)
    {
        foreach (PropertyInfo property in practice.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance))
        {
            string name = $"{prefix}{property.Name}";
            object? value = property.GetValue(practice);
            if (value is Length length)
            {
                yield return (name, length);
            }
            else if (value is ValueTuple<Length, Length> pair)
            {
                yield return ($"{name} across", pair.Item1);
                yield return ($"{name} overlap", pair.Item2);
            }
            else if (value is not null && value.GetType().Name.EndsWith("Practice", StringComparison.Ordinal))
            {
                foreach ((string, Length) inner in LengthsOf(value, $"{name}."))
                {
                    yield return inner;
                }
            }
        }
    }
}
