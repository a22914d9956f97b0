using CushionService.Contract.Orders;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications;
using CushionService.Intake;
using CushionService.Nesting;

namespace CushionService.Access;

/// <summary>What a caller may ask for, and how much of it.</summary>
/// <param name="Scopes">The calls, and what may come with an order.</param>
/// <param name="Pieces">Pieces of an order, at most, a cushion counting as ten: 1 to 10 000.</param>
/// <param name="Rate">Calls a second that the caller may keep up: 1 to 1 000 000.</param>
/// <param name="Burst">Calls at once after a pause: 1 to 10 000 000.</param>
/// <param name="Streams">Streams open at the same time: 1 to 1 000.</param>
internal sealed record Grant(Scopes Scopes, int Pieces, int Rate, int Burst, int Streams)
{
    private readonly Effort? _effort;

    /// <summary>The greatest effort outside of streams. When it is not configured: thorough with the scope quote, else
    /// standard.</summary>
    public Effort Effort
    {
        get => _effort ?? (Scopes.HasFlag(Scopes.Quote) ? Nesting.Effort.Thorough : Nesting.Effort.Standard);
        init => _effort = value;
    }

    /// <summary>The greatest effort where it is configured and not what the scopes say; null elsewhere.</summary>
    public Effort? OwnEffort => _effort;

    /// <summary>Steps of search that the caller may keep up, in millions a second: 1 to 1 000 000.</summary>
    public int Steps { get; init; } = 320;

    /// <summary>Steps at once after a pause, in millions: 1 to 10 000 000.</summary>
    public int StepsBurst { get; init; } = 10_000;

    /// <summary>Everything in an order that goes beyond the grant. An order is refused and never quietly answered with
    /// less effort: the same order has the same answer for everyone who gets one.</summary>
    /// <param name="order">The order; it need not be sound.</param>
    /// <param name="overnight">Whether the effort for repeated production orders may be asked for: by a known caller,
    /// in a stream.</param>
    /// <param name="usual">The effort of an order that names none; null for a call that lays nothing out.</param>
    /// <returns>A violation with the code not-allowed for each place; empty when the grant covers the order.</returns>
    public IReadOnlyList<Violation> Forbids(Order order, bool overnight, Effort? usual)
    {
        List<Violation> found = [];
        if (order.Effort == Nesting.Effort.Overnight)
        {
            if (!overnight || !Scopes.HasFlag(Scopes.Batch))
            {
                Add("/effort", GrantTexts.Overnight(ScopeNames.Of(Scopes.Batch)));
            }
        }
        else if (_effort is { } most)
        {
            if (usual is not null && (order.Effort ?? usual) > most)
            {
                Add("/effort", GrantTexts.MostEffort(most));
            }
        }
        else if (order.Effort > Effort)
        {
            Add("/effort", GrantTexts.Effort(order.Effort.Value, ScopeNames.Of(Scopes.Quote)));
        }

        if (OrderSize.Pieces(order) is long pieces && pieces > Pieces)
        {
            Add("", GrantTexts.Pieces(Pieces, pieces), Pieces);
        }

        if (!Scopes.HasFlag(Scopes.InlinePrices))
        {
            foreach (string place in OwnPrices.Brought(order))
            {
                Add(place, GrantTexts.OwnPrices(ScopeNames.Of(Scopes.InlinePrices)));
            }
        }

        return found;

        void Add(string pointer, Message detail, double? maximum = null) =>
            found.Add(new Violation(pointer, "not-allowed", detail, null, maximum));
    }
}
