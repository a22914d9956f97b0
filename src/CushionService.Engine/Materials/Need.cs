using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications;

namespace CushionService.Engine.Materials;

/// <summary>What one cushion line needs of an item.</summary>
/// <param name="Cushion">The cushion line.</param>
/// <param name="Goods">The item.</param>
/// <param name="Amount">How much, in base units of what it is measured in, above 0.</param>
/// <param name="Because">How the amount comes about.</param>
internal sealed record Need(CushionSpecification Cushion, Goods Goods, decimal Amount, Message Because)
{
    /// <summary>What is sawn for it; empty for all but foam.</summary>
    public ImmutableArray<FoamCut> Cuts { get; init; } = [];

    /// <summary>How long each length is and how many there are, where none may be joined from two; null where it may.</summary>
    public (Length Each, int Count)? Whole { get; init; }

    /// <summary>What it weighs; null where no density is known.</summary>
    public Mass? Weight { get; init; }
}
