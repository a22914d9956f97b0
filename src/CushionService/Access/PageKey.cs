using System.Collections.Frozen;

namespace CushionService.Access;

/// <summary>What a publishable key gives: the calls that a shop's page makes, from pages of its origins alone, at the shop's own
/// prices. The key is no secret, since it is in the page; what it is bound to makes it safe to show.</summary>
/// <param name="Name">Whose pages they are.</param>
/// <param name="Grant">What one shopper may ask for.</param>
/// <param name="Origins">The pages, in lower case as browsers send them.</param>
/// <param name="PriceBook">The price book of the shop; null when its pages show no prices.</param>
internal sealed record PageKey(string Name, Grant Grant, FrozenSet<string> Origins, string? PriceBook);
