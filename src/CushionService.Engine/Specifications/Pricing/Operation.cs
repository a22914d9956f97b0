using System.Collections.Immutable;
using System.Text.Json;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Specifications.Pricing;

/// <summary>Something that the workroom does, and takes time for: making a construction, setting in a closure, or an addition.</summary>
/// <param name="Word">The word of the construction, the closure or the addition; no two share one.</param>
public readonly record struct Operation(string Word)
{
    /// <summary>Every operation: constructions, closures, additions.</summary>
    public static ImmutableArray<Operation> All { get; } =
    [.. Enum.GetValues<Construction>().Select(Of), .. Enum.GetValues<ClosureKind>().Select(Of), .. Enum.GetValues<Addition>().Select(Of)];

    /// <summary>Making a cover of a construction, all that is not counted besides.</summary>
    public static Operation Of(Construction construction) => Spelled(construction);

    /// <summary>Setting in a closure.</summary>
    public static Operation Of(ClosureKind closure) => Spelled(closure);

    /// <summary>Making and setting in an addition, once.</summary>
    public static Operation Of(Addition addition) => Spelled(addition);

    /// <inheritdoc />
    public override string ToString() => Word;

    private static Operation Spelled(Enum value) => new(JsonNamingPolicy.KebabCaseLower.ConvertName(value.ToString()));
}
