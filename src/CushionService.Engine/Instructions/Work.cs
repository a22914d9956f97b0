using System.Collections.Immutable;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Panels;

namespace CushionService.Engine.Instructions;

/// <summary>A piece of work on one cover, with what must be done before it.</summary>
/// <param name="Text">What to do.</param>
/// <param name="Parts">The parts that it handles.</param>
internal sealed record Work(Message Text, params ImmutableArray<PartName> Parts)
{
    /// <summary>What must be done before. What no work of the cover does is not needed.</summary>
    public ImmutableArray<State> Needs { get; init; } = [];

    /// <summary>What it leaves done.</summary>
    public ImmutableArray<State> Makes { get; init; } = [];

    /// <summary>This work after more.</summary>
    /// <param name="states">States that are added to those that it needs already.</param>
    /// <returns>A new piece of work; this one is not changed.</returns>
    public Work After(params ReadOnlySpan<State> states) => this with { Needs = [.. Needs, .. states] };

    /// <summary>This work, leaving more done.</summary>
    /// <param name="states">States that are added to those that it makes already. Several pieces of work may make one state; it holds once
    /// all have.</param>
    public Work Making(params ReadOnlySpan<State> states) => this with { Makes = [.. Makes, .. states] };
}
