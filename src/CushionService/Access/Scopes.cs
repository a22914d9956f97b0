namespace CushionService.Access;

/// <summary>What a caller may do, as keys and tokens say it.</summary>
[Flags]
internal enum Scopes
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary><c>estimate</c>: what a shop's page needs: check an order, the fabric it takes, the
    /// catalogue.</summary>
    Estimate = 1,

    /// <summary><c>quote</c>: pieces, layouts, quotes, comparisons and fits, at any effort.</summary>
    Quote = 2,

    /// <summary><c>batch</c>: any number of orders in one stream.</summary>
    Batch = 4,

    /// <summary><c>prices:inline</c>: prices that come with the order.</summary>
    InlinePrices = 8,

    /// <summary>Everything.</summary>
    All = Estimate | Quote | Batch | InlinePrices,
}
