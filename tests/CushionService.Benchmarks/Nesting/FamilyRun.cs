using CushionService.Nesting;

namespace CushionService.Benchmarks.Nesting;

/// <summary>What to run: <c>-v</c> prints every instance, <c>-every=5</c> takes one instance in five, <c>-only=NAME,NAME</c> those
/// of these names; <c>-effort=quick</c> and <c>-turns=none</c> (or <c>quarter</c>) take one row instead of all.</summary>
internal sealed record FamilyRun(
    bool Verbose,
    int Every,
    IReadOnlyList<string>? Only,
    IReadOnlyList<Effort?> Efforts,
    IReadOnlyList<Rotations> Turns
)
{
    public static FamilyRun Parse(IReadOnlyList<string> arguments)
    {
        string? every = Option(arguments, "-every=");
        string? effort = Option(arguments, "-effort=");
        string? turns = Option(arguments, "-turns=");
        return new FamilyRun(
            arguments.Contains("-v"),
            every is null ? 1 : int.Parse(every),
            Option(arguments, "-only=")?.Split(','),
            effort is null ? [null, Effort.Quick, Effort.Standard, Effort.Thorough] : [Enum.Parse<Effort>(effort, ignoreCase: true)],
            turns is null ? [Rotations.None, Rotations.QuarterTurns] : [turns == "none" ? Rotations.None : Rotations.QuarterTurns]
        );
    }

    /// <summary>The instances to run.</summary>
    public IReadOnlyList<OpenInstance> Chosen(IReadOnlyList<OpenInstance> instances) =>
        [.. instances.Where(instance => Only?.Contains(instance.Name) != false).Where((_, index) => index % Every == 0)];

    private static string? Option(IReadOnlyList<string> arguments, string prefix) =>
        arguments.FirstOrDefault(argument => argument.StartsWith(prefix, StringComparison.Ordinal))?[prefix.Length..];
}
