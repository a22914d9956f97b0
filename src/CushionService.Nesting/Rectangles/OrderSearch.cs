namespace CushionService.Nesting.Rectangles;

/// <summary>Local search over the order in which a pass considers the copies (Yang, Han and Ye 2013): swap two, keep what is
/// no worse. It aims at the next lower saleable length and stops when the bound's rung is reached.</summary>
internal sealed class OrderSearch
{
    private readonly RectangleSet _set;
    private readonly SaleLadder _sale;
    private readonly SkylinePass _pass;
    private readonly StepBudget _budget;
    private readonly long _goal;
    private readonly int[] _order;
    private Xorshift _random = new(1);

    public OrderSearch(RectangleSet set, SaleLadder sale, long bound, StepBudget budget)
    {
        (_set, _sale, _budget) = (set, sale, budget);
        _pass = new SkylinePass(set, set.Width);
        _goal = sale.Reach(sale.RungFor(bound));
        _order = new int[set.Copies];
        X = new long[set.Copies];
        Y = new long[set.Copies];
        Turned = new bool[set.Copies];
    }

    /// <summary>Length of the best layout.</summary>
    public long Length { get; private set; } = long.MaxValue;

    /// <summary>Left edge of each copy in the best layout.</summary>
    public long[] X { get; }

    /// <summary>Lower edge of each copy in the best layout.</summary>
    public long[] Y { get; }

    /// <summary>Whether each copy is turned in the best layout.</summary>
    public bool[] Turned { get; }

    /// <summary>Runs until the goal is met or the steps are spent; at least one pass is made.</summary>
    public void Run()
    {
        for (var rule = 0; rule < 4 && Length > _goal && (rule == 0 || !_budget.Exhausted); rule++)
        {
            int[] order = Order(rule);
            _pass.Run(order, _budget);
            if (Keep())
            {
                order.CopyTo(_order, 0);
            }
        }

        if (_order.Length < 2)
        {
            return;
        }

        // Bisects the rungs between the goal and the best; each time all were tried in vain, every try gets twice the steps.
        long slice = 20L * _set.Copies * _set.Copies;
        long low = _sale.RungFor(_goal);
        while (Length > _goal && !_budget.Exhausted)
        {
            long best = _sale.RungFor(Length);
            long rung = Bisect == 1 ? Math.Max(low, 0) + (best - low - 1) / 2 : best - 1;
            if (!Aim(_sale.Reach(rung), slice))
            {
                low = rung + 1;
            }

            if (low >= _sale.RungFor(Length))
            {
                (low, slice) = (_sale.RungFor(_goal), slice * 2);
            }
        }
    }

    private static int Knob(string name, int otherwise) => int.TryParse(Environment.GetEnvironmentVariable(name), out int value) ? value : otherwise;

    private static readonly int Moves = Knob("K_MOVES", 40);private static readonly int Bisect = Knob("K_BIS", 0);
    private static readonly int Late = Knob("K_LATE", 1);

    /// <summary>Swaps copies in the order while no more area stays out of the box of the given length.</summary>
    private bool Aim(long limit, long steps)
    {
        long stop = _budget.Spent + steps;
        long current = _pass.Lay(_order, limit, long.MaxValue - _set.Area - _set.Width * limit, _budget);
        var history = new long[Late];
        Array.Fill(history, current);
        var turn = 0;
        while (current > 0 && _budget.Spent < stop && !_budget.Exhausted)
        {
            int a = _random.Next(_order.Length);
            int b = _random.Next(_order.Length);
            if (_set.KindOf[_order[a]] == _set.KindOf[_order[b]])
            {
                _budget.Spend(1);
                continue;
            }

            bool insert = Moves > 0 && _random.Next(100) < Moves;
            if (insert)
            {
                Move(a, b);
            }
            else
            {
                (_order[a], _order[b]) = (_order[b], _order[a]);
            }

            long outside = _pass.Lay(_order, limit, Math.Max(current, history[turn]), _budget);
            if (outside <= current || outside <= history[turn])
            {
                current = outside;
            }
            else if (insert)
            {
                Move(b, a);
            }
            else
            {
                (_order[a], _order[b]) = (_order[b], _order[a]);
            }

            history[turn] = current;
            turn = (turn + 1) % Late;
        }

        return current == 0 && Keep();
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
        _pass.X.CopyTo(X, 0);
        _pass.Y.CopyTo(Y, 0);
        _pass.Turned.CopyTo(Turned, 0);
        return true;
    }

    /// <summary>The copies from large to small by area, by longer side, by width, or by perimeter.</summary>
    private int[] Order(int rule)
    {
        var keys = new long[_set.Copies];
        var order = new int[_set.Copies];
        for (var copy = 0; copy < order.Length; copy++)
        {
            int kind = _set.KindOf[copy];
            var (across, along) = (_set.Across[kind], _set.Along[kind]);
            order[copy] = copy;
            keys[copy] = -(rule switch
            {
                0 => across * along,
                1 => Math.Max(across, along),
                2 => across,
                _ => across + along,
            });
        }

        Array.Sort(keys, order);
        return order;
    }
}
