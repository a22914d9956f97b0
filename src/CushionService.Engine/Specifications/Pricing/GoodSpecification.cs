namespace CushionService.Engine.Specifications.Pricing;

/// <summary>What a shop says of an item that it sells.</summary>
/// <param name="Label">What its customers call it; null for nothing.</param>
/// <param name="Link">Where it is sold, an absolute address; null for nowhere.</param>
public sealed record GoodSpecification(string? Label, string? Link);
