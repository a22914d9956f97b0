using System.Diagnostics;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Skylines;

/// <summary>Local search over the order in which a pass considers the copies (Yang, Han and Ye 2013): swap two, keep what is
/// no worse. It aims at the next lower saleable length and stops when the bound's rung is reached.</summary>
internal sealed class SequenceSearch
{
    private readonly RectangleSet _set;
    private readonly SaleLadder _sale;
    private readonly SkylinePass _pass;
    private readonly StepBudget _budget;
    private const int MovesPerMemory = 10;
    private const int InsertionShare = 40;
    private const int MostInOrder = 400;
    private const int LeftToOrder = 500;
    private const int KeptBack = 70;
    private const int MostMemory = 4096;
    private readonly int[] _copies;
    private readonly int[] _order;
    private long[] _history = [];
    private Xorshift _random = new(1);
    private long _slice;
    private long _stride = 2;

    public SequenceSearch(RectangleSet set, SaleLadder sale, StepBudget budget)
    {
        (_set, _sale, _budget) = (set, sale, budget);
        Layout = new RectangleLayout(set);
        if (set.Copies <= MostInOrder)
        {
            _pass = new SkylinePass(set, set.Width, set.Copies);
            _copies = new int[set.Copies];
            for (var copy = 0; copy < _copies.Length; copy++)
            {
                _copies[copy] = copy;
            }
        }
        else
        {
            // Nearly nothing is lost while there is much to choose from: only the end of a very large order needs a search.
            var skyline = new Skyline(set.Width, set.Copies);
            var bulk = new BulkPass(set);
            long lost = bulk.Run(skyline, LeftToOrder, KeptBack, Layout, budget);
            _copies = bulk.Left();
            _pass = new SkylinePass(set, set.Width, _copies.Length + skyline.Segments());
            _pass.Layout.CopyFrom(Layout);
            _pass.StartFrom(skyline, lost);
        }

        _order = [.. _copies];
        _slice = 20L * _copies.Length * _copies.Length;
    }

    /// <summary>Length of the best layout.</summary>
    public long Length { get; private set; } = long.MaxValue;

    /// <summary>The best layout so far.</summary>
    public RectangleLayout Layout { get; }

    /// <summary>Lays the copies from large to small, by several measures of size; at least one pass is made.</summary>
    public void Start(long goal)
    {
        var (sizes, order) = (new long[_copies.Length], new int[_copies.Length]);
        for (var rule = 0; rule < 4 && Length > goal && (rule == 0 || !_budget.Exhausted); rule++)
        {
            Order(rule, sizes, order);
            _pass.Run(order, _budget);
            if (Keep())
            {
                order.CopyTo(_order, 0);
            }
        }
    }

    /// <summary>Aims at one shorter saleable length after the other, until the goal is met or the steps are spent.</summary>
    public void Improve(long goal, long steps)
    {
        long stop = Math.Min(_budget.Spent + steps, _budget.Limit);
        while (Length > goal && _budget.Spent < stop && _order.Length > 0)
        {
            // Half the way to the goal, then a quarter, down to one rung; a vain try at that makes the next ones twice as long.
            long slice = _slice;
            long rung = _sale.RungFor(Length);
            long stride = Math.Max(1, (rung - _sale.RungFor(goal)) / _stride);
            if (Aim(_sale.Reach(rung - stride), Math.Min(slice, stop - _budget.Spent)))
            {
                continue;
            }

            (_slice, _stride) = stride > 1 ? (_slice, _stride * 2) : (_slice * 2, 2);
        }
    }

    /// <summary>Takes over a layout that was found elsewhere.</summary>
    public void Adopt(RectangleLayout layout)
    {
        Layout.CopyFrom(layout);
        long end = layout.End();
        Debug.Assert(end <= Length, "A longer layout is taken over.");
        Length = end;
    }

    /// <summary>Swaps and moves copies in the order to leave less area out of the box of the given length; late acceptance (Burke
    /// and Bykov 2017) compares with what was left out some moves ago.</summary>
    private bool Aim(long limit, long steps)
    {
        // Most small orders are done before they come here.
        _history = _history.Length == 0 ? new long[MostMemory] : _history;
        long start = _budget.Spent;
        long stop = start + steps;
        long current = _pass.Lay(_order, limit, _set.Area, _budget);
        int late = (int)Math.Clamp(steps / Math.Max(1, _budget.Spent - start) / MovesPerMemory, 1, _history.Length);
        Array.Fill(_history, current, 0, late);
        for (var turn = 0; current > 0 && _budget.Spent < stop; turn = turn + 1 == late ? 0 : turn + 1)
        {
            int a = _random.Next(_order.Length);
            int b = _random.Next(_order.Length);
            if (_set.KindOf[_order[a]] == _set.KindOf[_order[b]])
            {
                _budget.Spend(1);
                continue;
            }

            bool insert = _random.Next(100) < InsertionShare;
            Change(a, b, insert);
            long bar = Math.Max(current, _history[turn]);
            long outside = _pass.Lay(_order, limit, bar, _budget);
            if (outside <= bar)
            {
                current = outside;
            }
            else
            {
                Change(b, a, insert);
            }

            _history[turn] = current;
        }

        return current == 0 && Keep();
    }

    private void Change(int a, int b, bool insert)
    {
        if (insert)
        {
            Move(a, b);
        }
        else
        {
            (_order[a], _order[b]) = (_order[b], _order[a]);
        }
    }

    private void Move(int from, int to)
    {
        int copy = _order[from];
        if (from < to)
        {
            Array.Copy(_order, from + 1, _order, from, to - from);
        }
        else
        {
            Array.Copy(_order, to, _order, to + 1, from - to);
        }

        _order[to] = copy;
    }

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

    /// <summary>The copies from large to small by area, by longer side, by width, or by perimeter.</summary>
    private void Order(int rule, long[] sizes, int[] order)
    {
        _copies.CopyTo(order, 0);
        for (var index = 0; index < order.Length; index++)
        {
            int kind = _set.KindOf[order[index]];
            var (across, along) = (_set.Across[kind], _set.Along[kind]);
            sizes[index] = -(
                rule switch
                {
                    0 => across * along,
                    1 => Math.Max(across, along),
                    2 => across,
                    _ => across + along,
                }
            );
        }

        Array.Sort(sizes, order);
    }
}
