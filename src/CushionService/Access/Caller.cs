using CushionService.Contract.Orders;
using CushionService.Engine.Specifications;
using CushionService.Nesting;

namespace CushionService.Access;

/// <summary>Who calls.</summary>
/// <param name="Name">Tells callers apart for their limits and in the log: the name of a key or of a token's client,
/// never the key; or an address.</param>
/// <param name="Grant">What the caller may do.</param>
internal sealed record Caller(string Name, Grant Grant)
{
    /// <summary>Whether the caller has shown a key or a token, and not only an address.</summary>
    public bool IsKnown { get; init; }

    /// <summary>Whether the caller is an address without a key where others have one, and so shares the workers with all
    /// such addresses.</summary>
    public bool IsGuest { get; init; }

    /// <summary>The publishable key of the page that calls; null for every other caller.</summary>
    public PageKey? Page { get; init; }

    /// <summary>Everything in an order that goes beyond the grant, or names another price book than that of the caller's page.</summary>
    /// <inheritdoc cref="Grant.Forbids"/>
    public IReadOnlyList<Violation> Forbids(Order order, bool overnight, Effort? usual)
    {
        IReadOnlyList<Violation> found = Grant.Forbids(order, overnight, usual);
        return Page is { } page && order.PriceBook is { } named && named != page.PriceBook
            ? [.. found, new Violation("/priceBook", "not-allowed", GrantTexts.OtherBook)]
            : found;
    }

    /// <summary>The order at the prices of the caller's page; any other order as it is.</summary>
    /// <param name="received">The order as it arrived.</param>
    public ReceivedOrder Priced(ReceivedOrder received) =>
        Page?.PriceBook is { } book && received.Order is { } order ? received with { Order = order with { PriceBook = book } } : received;

    /// <summary>The service itself, without limits.</summary>
    public static Caller Self { get; } = new("self", new Grant(Scopes.All, int.MaxValue, int.MaxValue, int.MaxValue, int.MaxValue));

    /// <summary>Who sent a request that <see cref="AccessControl"/> has admitted.</summary>
    /// <exception cref="InvalidOperationException">The endpoint names no scope, which every call that takes orders
    /// must.</exception>
    /// <param name="http">The request.</param>
    public static Caller Of(HttpContext http) =>
        http.Features.Get<Caller>()
        ?? throw new InvalidOperationException("A call without a needed scope has no caller: every call that takes orders names one.");
}
