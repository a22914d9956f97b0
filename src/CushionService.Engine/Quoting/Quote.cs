using System.Collections.Immutable;
using CushionService.Engine.Costing;
using CushionService.Engine.Instructions;
using CushionService.Engine.Layouts;
using CushionService.Engine.Materials;
using CushionService.Engine.Messages;

namespace CushionService.Engine.Quoting;

/// <summary>Everything about an order: what to cut, lay, buy, pay and sew.</summary>
/// <param name="Drafting">The patterns and the pieces.</param>
/// <param name="Yardages">The layout of each fabric that is used, and how much of it to buy.</param>
/// <param name="Materials">Everything to buy, the fabric too.</param>
/// <param name="Cost">What it costs; null when the order names no currency.</param>
/// <param name="Steps">What to do, in order.</param>
/// <param name="Cautions">The cautions that apply.</param>
/// <remarks>Nothing in it is decided later: callers write it out as it is, in their units and language.</remarks>
public sealed record Quote(
    Drafting Drafting,
    ImmutableArray<Yardage> Yardages,
    ImmutableArray<Material> Materials,
    Cost? Cost,
    ImmutableArray<Step> Steps,
    ImmutableArray<Caution> Cautions
)
{
    /// <summary>The tools that the steps ask for.</summary>
    public ImmutableArray<ToolUse> Tools { get; } = ToolUse.Of(Steps);

    /// <summary>How to clean the covers, a sentence for each kind among them; empty for an order without cushions.</summary>
    public ImmutableArray<Message> Care { get; init; } = [];
}
