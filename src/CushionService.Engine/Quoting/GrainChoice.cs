using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Nesting;
using CushionService.Nesting.Solving;

namespace CushionService.Engine.Quoting;

/// <summary>Decides which way the fabric runs on the cushions whose grain is left open: the way that sells shorter.</summary>
/// <remarks>It lays the order with all of them up the bolt and with all of them railroaded, then turns one at a time from the better of
/// the two; of three it tries every way. Cushions of a row turn together. All of these layouts together take a third of what one largest
/// search takes, or less: what is chosen is laid with all of its steps afterwards.</remarks>
internal sealed class GrainChoice
{
    // Rows and single cushions that are turned one at a time; a bound on time, for every turn is drafted and laid.
    private const int MostTurned = 8;

    // So many rows and cushions have eight ways, which are all tried.
    private const int Three = 3;

    // What a quick search is given by all ways together; a longer one is given half of its own steps.
    private const int Plain = 2;
    private const int Ways = Plain + MostTurned;

    // Cushions of an order that is searched in so little time that both plain ways are searched as hard as the order.
    private const int Few = 6;

    private readonly OrderSpecification _order;
    private readonly ImmutableArray<IConstruction> _constructions;

    // The row of each cushion, or a number of its own beyond the rows: what has one number turns together.
    private readonly int[] _groups;

    // Whether a fabric of the cushion may run either way.
    private readonly bool[] _isOpen;

    // What all layouts of the comparison may cost.
    private readonly long _most;
    private readonly CancellationToken _cancellation;
    private long _steps;

    private GrainChoice(OrderSpecification order, ImmutableArray<IConstruction> constructions, int sharedBy, CancellationToken cancellation)
    {
        (_order, _constructions, _cancellation) = (order, constructions, cancellation);
        _most = AnswerSteps.ForGrain(order, sharedBy);
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
    /// <param name="sharedBy">How many quotes share the effort's steps, at least 1.</param>
    /// <param name="cancellation">Cancels the search.</param>
    /// <returns>One notice for each cushion that was open, with what both plain ways would have taken; and the steps that deciding
    /// took.</returns>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    public static (OrderSpecification Order, ImmutableArray<Violation> Said, long Steps) Of(
        OrderSpecification order,
        ImmutableArray<IConstruction> constructions,
        int sharedBy,
        CancellationToken cancellation
    ) => new GrainChoice(order, constructions, sharedBy, cancellation).Decide();

    // Up the bolt wins a tie. Only a strictly shorter trial replaces the best one.
    private (OrderSpecification, ImmutableArray<Violation>, long) Decide()
    {
        bool[] up = new bool[_groups.Length],
            railroaded = [.. _isOpen.Select(_ => true)];
        Keep(up);
        Keep(railroaded);
        int[] open = [.. _groups.Where((_, i) => _isOpen[i]).Distinct()];
        int turns =
            open.Length <= 1 ? 0
            : open.Length == Three ? 2 * Three
            : Math.Min(open.Length, MostTurned);
        Drafting first = Draft(up);
        (int plain, int sharing) = Shares(first, turns);
        (Trial? Sold, bool[] Way) best = (Sold(first, plain), up),
            other = (Sold(Draft(railroaded), plain), railroaded);
        (Trial? allUp, Trial? allRailroaded) = (best.Sold, other.Sold);
        (best, other) = IsShorter(other.Sold, best.Sold) ? (other, best) : (best, other);
        long each = _steps / 2;
        // From the better plain way on: a cushion or a row that goes the other way may fill what the others leave. Of three, each that
        // differs from the other two, so that every way is tried.
        bool[] better = best.Way;
        int[] largest = [.. open.OrderByDescending(group => AreaOf(first, group).SquareNanometres)];
        (int Group, bool[]? From)[] tried =
            open.Length == Three
                ? [.. largest.Select(group => (group, better)), .. largest.Select(group => (group, other.Way))]
                : [.. largest.Take(turns).Select(group => (group, (bool[]?)null))];
        foreach ((int group, bool[]? from) in tried)
        {
            // Another way takes about as many steps as each of these two did, which for many pieces on a repeat is more than its share.
            if (_steps + each > _most)
            {
                break;
            }

            bool[] turned = [.. (from ?? best.Way).Select((way, i) => _groups[i] == group ? !way : way)];
            Keep(turned);
            Trial? sold = turned.SequenceEqual(best.Way) ? best.Sold : Sold(Draft(turned), sharing);
            best = IsShorter(sold, best.Sold) ? (sold, turned) : best;
        }

        return (With(best.Way), [.. Enumerable.Range(0, _isOpen.Length).Where(i => _isOpen[i]).Select(Said)], _steps);

        Violation Said(int i) =>
            new(
                $"{_order.Cushions[i].Pointer}/grain",
                "grain-chosen",
                DraftTexts.GrainChosen(_order.Cushions[i].Name, best.Way[i], Taken(best.Sold), Taken(allUp), Taken(allRailroaded))
            );
    }

    // The fabric of cushions that turn together. The largest turn first, in whichever order they were entered.
    private Area AreaOf(Drafting drafting, int group)
    {
        HashSet<string> cushions = [.. _order.Cushions.Where((_, i) => _groups[i] == group).Select(cushion => cushion.Id)];
        return drafting
            .Pieces.Where(piece => piece.Cushion is { } cushion && cushions.Contains(cushion.Id))
            .Aggregate(default(Area), (sum, piece) => sum + piece.Quantity * piece.Area);
    }

    // As hard as the order's own search, or a way could win that sells longer in the end; but a thorough comparison takes too long.
    private Effort Effort => _order.Effort == Effort.Quick ? Effort.Quick : Effort.Standard;

    private int Sharing => _order.Effort == Effort.Quick ? Ways : 2 * Ways;

    // By how many searches the steps of a plain way and of a turn are shared, so that all together keep what they may cost.
    private (int Plain, int Turned) Shares(Drafting drafting, int turns)
    {
        int plain = _order.Cushions.Sum(cushion => cushion.Quantity) <= Few ? 1 : Sharing;
        long one = Opened().Sum(fabric => AnswerSteps.CostOf(drafting.Pieces, fabric.Id, Effort));
        int more = SearchCost.SharedBy((Plain * one / plain) + (turns * one / Sharing), _most);
        return (plain * more, Sharing * more);
    }

    // The fabrics of which a cushion may run either way.
    private IEnumerable<FabricSpecification> Opened() =>
        _order.Fabrics.Where(fabric => _order.Cushions.Any(cushion => Open(cushion, _order).Contains(fabric)));

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
    private Trial? Sold(Drafting drafting, int sharing)
    {
        if (!drafting.Violations.IsEmpty)
        {
            return null;
        }

        var sold = Length.Zero;
        var taken = ImmutableArray.CreateBuilder<Message>();
        foreach (FabricSpecification fabric in Opened())
        {
            CutPiece[] pieces = [.. drafting.Pieces.Where(piece => piece.Fabric == fabric.Id)];
            if (pieces.Length > 0)
            {
                var yardage = new Yardage(FabricNesting.LayOut(fabric, pieces, Effort, sharing, _cancellation));
                _steps += yardage.Layout.Steps;
                sold += yardage.Sold;
                taken.Add(DraftTexts.FabricTaken(yardage.SoldAmount, fabric.Name));
            }
        }

        return new Trial(sold, taken.ToImmutable());
    }

    // Drafting takes long for what it costs, so that it looks for the caller first.
    private Drafting Draft(bool[] way)
    {
        _cancellation.ThrowIfCancellationRequested();
        return Drafting.Decided(With(way), _constructions, []);
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
