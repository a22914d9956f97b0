using System.Text.Json.Serialization;

namespace CushionService.Contract.Answers;

/// <summary>A point, from the lower left corner of what it belongs to, written as a pair: <c>[x, y]</c>.</summary>
/// <param name="X">Across the fabric.</param>
/// <param name="Y">Along the fabric.</param>
[JsonConverter(typeof(PairConverter<PointAnswer, double>))]
public sealed record PointAnswer(double X, double Y) : IPair<PointAnswer, double>
{
    static PointAnswer IPair<PointAnswer, double>.Of(double x, double y) => new(x, y);
}
