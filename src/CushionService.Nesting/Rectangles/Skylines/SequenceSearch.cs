using System.Diagnostics;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Skylines;

/// <summary>Local search over the order in which a pass considers the copies (Yang, Han and Ye 2013): swap two, keep what is
/// no worse. It aims at the next lower saleable length and stops when the bound's rung is reached.</summary>
internal sealed class SequenceSearch
{
    private readonly RectangleSet _set;
    private readonly SaleLadder _sale;
    private readonly ISequencePass _pass;
    private readonly StepBudget _budget;

    // A memory of a tenth of the moves that a try can make; longer ones end before they have forgotten their start.
    private const int MovesPerMemory = 10;

    // Of a hundred moves, this many take one copy to another place; the others exchange two.
    private const int InsertionShare = 40;

    private readonly int[] _copies;
    private readonly int[] _same;
    private readonly int[] _order;
    private readonly LateAcceptance _accepted = new();
    private Xorshift _random = new(1);
    private long _slice;
    private long _stride = 2;

    /// <summary>A search that lays the copies with a pass.</summary>
    /// <param name="set">All copies.</param>
    /// <param name="copies">Those that the search orders; the pass knows where the others lie.</param>
    /// <param name="same">Copies of one number here are exchanged in vain.</param>
    /// <param name="pass">Lays a sequence.</param>
    /// <param name="sale">The lengths that can be bought.</param>
    /// <param name="budget">Pays for the steps.</param>
    public SequenceSearch(RectangleSet set, int[] copies, int[] same, ISequencePass pass, SaleLadder sale, StepBudget budget)
    {
        (_set, _copies, _same, _pass, _sale, _budget) = (set, copies, same, pass, sale, budget);
        Layout = new RectangleLayout(set);
        _order = [.. copies];
        _slice = 20L * copies.Length * copies.Length;
    }

    /// <summary>Length of the best layout.</summary>
    public long Length { get; private set; } = long.MaxValue;

    /// <summary>The best layout so far.</summary>
    public RectangleLayout Layout { get; }

    /// <summary>Lays the copies from large to small, by several measures of size; at least one pass is made.</summary>
    /// <param name="goal">A layout up to this length is good enough.</param>
    /// <param name="first">Copies that are laid before all others in the first passes; null for none.</param>
    public void Start(long goal, bool[]? first = null)
    {
        var (sizes, order) = (new long[_copies.Length], new int[_copies.Length]);
        int rules = first is null ? SizeOrder.Rules : 2 * SizeOrder.Rules;
        for (var rule = 0; rule < rules && Length > goal && (rule == 0 || !_budget.Exhausted); rule++)
        {
            SizeOrder.Write(_set, _copies, rule % SizeOrder.Rules, rule < SizeOrder.Rules ? first : null, sizes, order);
            if (_pass.Lay(order, Skyline.Wall, 0, _budget) == 0 && Keep())
            {
                order.CopyTo(_order, 0);
            }
        }
    }

    /// <summary>Aims at one shorter saleable length after the other, until the goal is met or the steps are spent.</summary>
    /// <param name="goal">A layout up to this length is good enough, grid units.</param>
    /// <param name="steps">Steps to spend.</param>
    public void Improve(long goal, long steps) => Improve(goal, steps, _sale);

    /// <summary>Aims at shorter lengths though they are sold as the same: what is left over is longer then.</summary>
    /// <inheritdoc cref="Improve(long, long)"/>
    public void Shorten(long goal, long steps)
    {
        _stride = 2;
        Improve(goal, steps, SaleLadder.EveryUnit);
    }

    private void Improve(long goal, long steps, SaleLadder sale)
    {
        long stop = Math.Min(_budget.Spent + steps, _budget.Limit);
        while (Length > goal && _budget.Spent < stop && _order.Length > 0)
        {
            // Half the way to the goal, then a quarter, down to one rung; a vain try at that makes the next ones twice as long.
            long slice = _slice;
            long rung = sale.RungFor(Length);
            long stride = Math.Max(1, (rung - sale.RungFor(goal)) / _stride);
            if (Aim(sale.Reach(rung - stride), Math.Min(slice, stop - _budget.Spent)))
            {
                continue;
            }

            (_slice, _stride) = stride > 1 ? (_slice, _stride * 2) : (_slice * 2, 2);
        }
    }

    /// <summary>Takes over a layout that was found elsewhere.</summary>
    /// <param name="layout">Of the same copies, and no longer.</param>
    public void Adopt(RectangleLayout layout)
    {
        Layout.CopyFrom(layout);
        long end = layout.End();
        Debug.Assert(end <= Length, "A longer layout is taken over.");
        Length = end;
    }

    /// <summary>Swaps and moves copies in the order to leave less area out of the box of the given length; late acceptance (Burke
    /// and Bykov 2017) compares with what was left out some moves ago.</summary>
    /// <param name="limit">The length to aim at, grid units.</param>
    /// <param name="steps">Steps to spend.</param>
    /// <returns>Whether a layout of that length was found.</returns>
    private bool Aim(long limit, long steps)
    {
        long start = _budget.Spent;
        long stop = start + steps;
        long current = _pass.Lay(_order, limit, _set.Area, _budget);
        long tries = steps / Math.Max(1, _budget.Spent - start);
        _accepted.Begin(current, tries / MovesPerMemory);
        while (current > 0 && _budget.Spent < stop)
        {
            int a = _random.Next(_order.Length);
            int b = _random.Next(_order.Length);
            if (_same[_order[a]] == _same[_order[b]])
            {
                _budget.Spend(1);
                _accepted.Skip();
                continue;
            }

            bool insert = _random.Next(100) < InsertionShare;
            SequenceMove.Make(_order, a, b, insert);
            long bar = Math.Max(current, _accepted.Late);
            long outside = _pass.Lay(_order, limit, bar, _budget);
            if (outside <= bar)
            {
                current = outside;
            }
            else
            {
                SequenceMove.Make(_order, b, a, insert);
            }

            _accepted.Note(current);
        }

        return current == 0 && Keep();
    }

    /// <summary>Takes the pass's layout over if it is shorter.</summary>
    private bool Keep()
    {
        if (_pass.Length >= Length)
        {
            return false;
        }

        Length = _pass.Length;
        Layout.CopyFrom(_pass.Layout);
        Debug.Assert(_copies.Length < _set.Copies || Layout.End() == Length, "A pass reports another length than its layout has.");
        return true;
    }
}
