using System.Collections.Immutable;
using CushionService.Engine.Messages;

namespace CushionService.Engine.Instructions;

/// <summary>A step of the making.</summary>
/// <param name="Text">What to do.</param>
/// <param name="Pieces">The ids of the cut pieces that it handles.</param>
public sealed record Step(Message Text, ImmutableArray<string> Pieces)
{
    /// <summary>The id of the cushion that it is about; null for a step of the whole order.</summary>
    public string? Cushion { get; init; }
}
