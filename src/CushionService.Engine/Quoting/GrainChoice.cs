using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Nesting;

namespace CushionService.Engine.Quoting;

/// <summary>Decides which way the fabric runs on the cushions whose grain is left open: the way that sells shorter.</summary>
/// <remarks>It lays the order with all of them up the bolt and with all of them railroaded, then turns one at a time from the better of
/// the two. Cushions of a row turn together.</remarks>
internal sealed class GrainChoice
{
    // Rows and single cushions that are turned one at a time; a bound on time, for every turn is a layout.
    private const int MostTurned = 8;

    // What a quick search is given by all ways together; a longer one is given half of its own steps.
    private const int Ways = 2 + MostTurned;

    // Cushions of an order that is searched in so little time that both plain ways are searched as hard as the order.
    private const int Few = 6;

    private readonly OrderSpecification _order;
    private readonly ImmutableArray<IConstruction> _constructions;

    // The row of each cushion, or a number of its own beyond the rows: what has one number turns together.
    private readonly int[] _groups;

    // Whether a fabric of the cushion may run either way.
    private readonly bool[] _isOpen;

    private GrainChoice(OrderSpecification order, ImmutableArray<IConstruction> constructions)
    {
        (_order, _constructions) = (order, constructions);
        _isOpen = [.. order.Cushions.Select(cushion => Open(cushion, order).Any())];
        _groups = new int[order.Cushions.Length];
        for (var i = 0; i < _groups.Length; i++)
        {
            string id = order.Cushions[i].Id;
            int row = RowOf(order, id);
            _groups[i] = row >= 0 ? row : order.Rows.Length + i;
        }
    }

    /// <summary>Whether a cushion of the order may run either way.</summary>
    /// <param name="order">Any order.</param>
    /// <returns>Cheap, since every order is asked: no layout is made for the answer.</returns>
    public static bool IsNeeded(OrderSpecification order)
    {
        foreach (FabricSpecification fabric in order.Fabrics)
        {
            if (fabric.Grain == Grain.Either)
            {
                return order.Cushions.Length > 0;
            }
        }

        foreach (CushionSpecification cushion in order.Cushions)
        {
            if (cushion.Grain == Grain.Either)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The order with every grain decided, and what was decided for each cushion that was open.</summary>
    /// <param name="order">An order for which <see cref="IsNeeded"/> holds.</param>
    /// <param name="constructions">The constructions that draft it.</param>
    /// <returns>One notice for each cushion that was open, with what both plain ways would have taken.</returns>
    public static (OrderSpecification Order, ImmutableArray<Violation> Said) Of(
        OrderSpecification order,
        ImmutableArray<IConstruction> constructions
    ) => new GrainChoice(order, constructions).Decide();

    // Up the bolt wins a tie. Only a strictly shorter trial replaces the best one.
    private (OrderSpecification, ImmutableArray<Violation>) Decide()
    {
        bool[] up = new bool[_groups.Length],
            railroaded = [.. _isOpen.Select(_ => true)];
        Keep(up);
        Keep(railroaded);
        int cushions = _order.Cushions.Sum(cushion => cushion.Quantity),
            plain = cushions <= Few ? 1 : Sharing;
        (Trial? Sold, bool[] Way) best = (Sold(up, plain), up),
            other = (Sold(railroaded, plain), railroaded);
        (Trial? allUp, Trial? allRailroaded) = (best.Sold, other.Sold);
        best = IsShorter(other.Sold, best.Sold) ? other : best;
        // From the better plain way on: a cushion or a row that goes the other way may fill what the others leave.
        int[] open = [.. _groups.Where((_, i) => _isOpen[i]).Distinct()];
        foreach (int group in open.Length > 1 ? open.Take(MostTurned) : [])
        {
            bool[] turned = [.. best.Way.Select((way, i) => _groups[i] == group ? !way : way)];
            Keep(turned);
            Trial? sold = turned.SequenceEqual(best.Way) ? best.Sold : Sold(turned, Sharing);
            best = IsShorter(sold, best.Sold) ? (sold, turned) : best;
        }

        return (With(best.Way), [.. Enumerable.Range(0, _isOpen.Length).Where(i => _isOpen[i]).Select(Said)]);

        Violation Said(int i) =>
            new(
                $"{_order.Cushions[i].Pointer}/grain",
                "grain-chosen",
                DraftTexts.GrainChosen(_order.Cushions[i].Name, best.Way[i], Taken(best.Sold), Taken(allUp), Taken(allRailroaded))
            );
    }

    // As hard as the order's own search, or a way could win that sells longer in the end; but a thorough comparison takes too long.
    private Effort Effort => _order.Effort == Effort.Quick ? Effort.Quick : Effort.Standard;

    private int Sharing => _order.Effort == Effort.Quick ? Ways : 2 * Ways;

    // A way in which a piece does not fit is null, and loses to any that can be cut.
    private static bool IsShorter(Trial? one, Trial? other) => one is not null && (other is null || one.Sold < other.Sold);

    // Nothing where it cannot be cut.
    private static ImmutableArray<Message> Taken(Trial? trial) => trial?.Taken ?? [];

    // A row takes the grain of those of its cushions that leave no choice.
    private void Keep(bool[] way)
    {
        for (var i = 0; i < way.Length; i++)
        {
            if (!_isOpen[i])
            {
                way[i] = _order.Cushions[i].IsRailroaded(_order.Fabric(_order.Cushions[i].Fabrics.Top));
                for (var j = 0; j < way.Length; j++)
                {
                    way[j] = _isOpen[j] && _groups[j] == _groups[i] ? way[i] : way[j];
                }
            }
        }
    }

    // The number of the row that a cushion is in, or -1 for none.
    private static int RowOf(OrderSpecification order, string cushion)
    {
        for (var i = 0; i < order.Rows.Length; i++)
        {
            if (order.Rows[i].Cushions.Contains(cushion))
            {
                return i;
            }
        }

        return -1;
    }

    // What is sold of the fabrics of open cushions; null where a piece does not fit.
    private Trial? Sold(bool[] way, int sharing)
    {
        Drafting drafting = Drafting.Decided(With(way), _constructions, []);
        if (!drafting.Violations.IsEmpty)
        {
            return null;
        }

        var sold = Length.Zero;
        var taken = ImmutableArray.CreateBuilder<Message>();
        foreach (FabricSpecification fabric in _order.Fabrics)
        {
            CutPiece[] pieces = [.. drafting.Pieces.Where(piece => piece.Fabric == fabric.Id)];
            if (pieces.Length > 0 && _order.Cushions.Any(cushion => Open(cushion, _order).Contains(fabric)))
            {
                var yardage = new Yardage(FabricNesting.LayOut(fabric, pieces, Effort, sharing, CancellationToken.None));
                sold += yardage.Sold;
                taken.Add(DraftTexts.FabricTaken(yardage.SoldAmount, fabric.Name));
            }
        }

        return new Trial(sold, taken.ToImmutable());
    }

    private OrderSpecification With(bool[] way) =>
        _order with
        {
            Cushions = [.. _order.Cushions.Select((cushion, i) => cushion with { RailroadedWhereOpen = way[i] })],
        };

    // The fabrics that may run either way on a cushion.
    private static IEnumerable<FabricSpecification> Open(CushionSpecification cushion, OrderSpecification order) =>
        Enum.GetValues<FabricRole>()
            .Where(role => role != FabricRole.InnerCover)
            .Select(role => order.Fabric(cushion.Fabrics[role]))
            .Where(fabric => (cushion.Grain ?? fabric.Grain) == Grain.Either)
            .Distinct();

    // What an order takes of the fabrics of open cushions, one way.
    private sealed record Trial(Length Sold, ImmutableArray<Message> Taken);
}
