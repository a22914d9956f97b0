using System.Collections.Immutable;
using CushionService.Engine.Costing;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Pricing;

namespace CushionService.Engine.Quoting;

/// <summary>One way to make an order, quoted: as a whole, or in parts that are each cut from a length of their own.</summary>
/// <param name="Quotes">The quotes of the parts, at least one.</param>
public sealed record Alternative(ImmutableArray<Quote> Quotes)
{
    /// <summary>Length of fabric to buy, over all fabrics and parts.</summary>
    public Length Sold { get; } = Quotes.SelectMany(quote => quote.Yardages).Aggregate(Length.Zero, (sum, yardage) => sum + yardage.Sold);

    /// <summary>The least that all parts together cost before tax; null for none.</summary>
    public Money? Minimum { get; init; }

    /// <summary>The tax on what is missing to it; null for none.</summary>
    public TaxSpecification? Tax { get; init; }

    /// <summary>What all parts cost; null when the order names no currency.</summary>
    /// <remarks>Each part is quoted without the least price, which holds for all of them together: what is missing to it
    /// is added here, with its tax.</remarks>
    public Money? Total =>
        Sum(cost => cost.Total) is { } total && Minimum is { } least && Sum(cost => cost.BeforeTax) is { } net && net.Amount < least.Amount
            ? total + ((1 + (Tax?.Rate ?? 0)) * (least - net)).RoundHalfUp()
            : Sum(cost => cost.Total);

    /// <summary>Items without a price, which the total leaves out.</summary>
    public ImmutableArray<string> Unpriced { get; } = [.. Quotes.SelectMany(quote => quote.Cost?.Unpriced ?? []).Distinct()];

    /// <summary>Whether every fabric has a price, so that the total may be held against another's. What else is unpriced is so in every
    /// alternative.</summary>
    public bool IsPriced =>
        Total is not null && !Quotes.SelectMany(quote => quote.Yardages).Any(yardage => Unpriced.Contains(yardage.Layout.Fabric.Id));

    private Money? Sum(Func<Cost, Money> of) =>
        Quotes.Select(quote => quote.Cost is { } cost ? of(cost) : (Money?)null).Aggregate((sum, part) => sum + part);

    // Where a least price or a rounding makes two totals one, the workroom still wants the cheaper.
    private decimal Bought => Quotes.Sum(quote => quote.Cost?.Lines.Sum(line => line.Amount.Amount) ?? 0);

    /// <summary>Cheapest first: priced alternatives by their totals, and those of one total by what their materials cost; then the others
    /// by the length sold; equals keep their order.</summary>
    /// <param name="one">An alternative.</param>
    /// <param name="other">Another way to make the same order.</param>
    /// <returns>Below zero where the first comes first. The totals are of one currency, that of the order.</returns>
    public static int ByCost(Alternative one, Alternative other) =>
        one.IsPriced != other.IsPriced ? (one.IsPriced ? -1 : 1)
        : one.IsPriced ? (one.Total!.Value.Amount, one.Bought).CompareTo((other.Total!.Value.Amount, other.Bought))
        : one.Sold.CompareTo(other.Sold);
}
