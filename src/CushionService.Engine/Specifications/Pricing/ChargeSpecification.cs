using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Pricing;

/// <summary>A fee beyond materials and labour.</summary>
/// <param name="Label">What customers read.</param>
/// <param name="Amount">How much each time, at least 0, without tax.</param>
/// <param name="Per">How often it is charged.</param>
public sealed record ChargeSpecification(string Label, Money Amount, ChargeBasis Per);
