using CushionService.Nesting;

namespace CushionService.Benchmarks.Outlines;

/// <summary>An instance of the nesting literature in whole units, and the shortest length published for it.</summary>
internal sealed record OutlineInstance(string Name, StripProblem Problem, double BestKnown);
