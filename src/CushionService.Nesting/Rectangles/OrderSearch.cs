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

    public OrderSearch(RectangleSet set, SaleLadder sale, long bound, StepBudget budget)
    {
        (_set, _sale, _budget) = (set, sale, budget);
        _pass = new SkylinePass(set, set.Width);
        _goal = sale.Reach(sale.RungFor(bound));
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
        var best = Order(0);
        long current = Try(best, Skyline.Wall);
        for (var rule = 1; rule < 4 && Length > _goal && !_budget.Exhausted; rule++)
        {
            int[] order = Order(rule);
            long length = Try(order, Skyline.Wall);
            if (length < current)
            {
                (best, current) = (order, length);
            }
        }

        if (best.Length < 2)
        {
            return;
        }

        var random = new Xorshift(1);
        while (Length > _goal && !_budget.Exhausted)
        {
            int a = random.Next(best.Length);
            int b = random.Next(best.Length);
            if (_set.KindOf[best[a]] == _set.KindOf[best[b]])
            {
                _budget.Spend(1);
                continue;
            }

            (best[a], best[b]) = (best[b], best[a]);
            long length = Try(best, current);
            if (length <= current)
            {
                current = length;
            }
            else
            {
                (best[a], best[b]) = (best[b], best[a]);
            }
        }
    }

    private long Try(int[] order, long limit)
    {
        long length = _pass.Run(order, limit, _budget);
        if (length < Length)
        {
            Length = length;
            _pass.X.CopyTo(X, 0);
            _pass.Y.CopyTo(Y, 0);
            _pass.Turned.CopyTo(Turned, 0);
        }

        return length;
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
