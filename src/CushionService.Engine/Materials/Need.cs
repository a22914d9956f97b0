using CushionService.Engine.Measures;

namespace CushionService.Engine.Materials;

/// <summary>What one cushion line needs of an item.</summary>
/// <param name="Cushion">The cushion's id.</param>
/// <param name="Goods">The item.</param>
/// <param name="Amount">How much, in base units of what it is measured in, above 0.</param>
/// <param name="Because">How the amount comes about.</param>
internal sealed record Need(string Cushion, Goods Goods, decimal Amount, string Because)
{
    /// <summary>What it weighs; null where no density is known.</summary>
    public Mass? Weight { get; init; }
}
