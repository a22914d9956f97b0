using System.Collections.Immutable;

namespace CushionService.Engine.Instructions;

/// <summary>A step of the making.</summary>
/// <param name="Text">What to do.</param>
/// <param name="Pieces">The ids of the cut pieces that it handles.</param>
public sealed record Step(string Text, ImmutableArray<string> Pieces);
