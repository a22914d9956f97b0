namespace CushionService.Engine.Specifications.Pricing;

/// <summary>A tax on the price.</summary>
/// <param name="Label">What customers read; null for the word for a tax in their language.</param>
/// <param name="Rate">A share of the price, from 0 to 1.</param>
public sealed record TaxSpecification(string? Label, decimal Rate);
