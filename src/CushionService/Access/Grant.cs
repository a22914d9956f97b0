using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Specifications;
using CushionService.Intake;
using CushionService.Nesting;

namespace CushionService.Access;

/// <summary>What a caller may ask for, and how much of it.</summary>
/// <param name="Scopes">What it may do.</param>
/// <param name="Pieces">Pieces of an order, at most, a cushion counting as ten.</param>
/// <param name="Rate">Calls a second that it may keep up.</param>
/// <param name="Burst">Calls that it may make at once after a rest.</param>
/// <param name="Streams">Streams that it may have open at the same time.</param>
internal sealed record Grant(Scopes Scopes, int Pieces, int Rate, int Burst, int Streams)
{
    /// <summary>The hardest search that it may ask for: a page gets no more than a quote's.</summary>
    public Effort Effort => Scopes.HasFlag(Scopes.Quote) ? Effort.Thorough : Effort.Standard;

    /// <summary>Everything in an order that goes beyond the grant. An order is refused and never quietly worked on with less effort: the
    /// same order has the same answer for everyone who gets one.</summary>
    /// <param name="order">The order.</param>
    /// <param name="overnight">Whether the search for repeated production orders may be asked for: by a caller that is known, in a
    /// stream.</param>
    public IReadOnlyList<Violation> Forbids(Order order, bool overnight)
    {
        List<Violation>? found = null;
        if (order.Effort == Effort.Overnight)
        {
            if (!overnight || !Scopes.HasFlag(Scopes.Batch))
            {
                Add("/effort", $"The effort overnight needs a key with the scope {ScopeNames.Of(Scopes.Batch)}, and an order in a stream.");
            }
        }
        else if (order.Effort > Effort)
        {
            Add("/effort", $"The effort {Words<Effort>.Of(order.Effort.Value)} needs the scope {ScopeNames.Of(Scopes.Quote)}.");
        }

        if (OrderSize.Pieces(order) is long pieces && pieces > Pieces)
        {
            Add("", $"This caller's orders may have at most {Pieces} pieces, a cushion counting as ten; the order has {pieces}.", Pieces);
        }

        if (!Scopes.HasFlag(Scopes.InlinePrices))
        {
            foreach (string place in OwnPrices.Brought(order))
            {
                Add(place, $"Prices that come with the order need the scope {ScopeNames.Of(Scopes.InlinePrices)}.");
            }
        }

        return found ?? (IReadOnlyList<Violation>)[];

        void Add(string pointer, string detail, double? maximum = null) =>
            (found ??= []).Add(new Violation(pointer, "not-allowed", detail, null, maximum));
    }
}
