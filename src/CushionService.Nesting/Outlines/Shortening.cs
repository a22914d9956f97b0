namespace CushionService.Nesting.Outlines;

/// <summary>Asks again and again for a little less length and pulls apart the overlaps that this makes. Where one descent ends is
/// much a matter of chance, so a long search begins several, and after each round of equal work gives up the longer half
/// (sequential halving: Karnin, Koren and Somekh, "Almost optimal exploration in multi-armed bandits", 2013).</summary>
internal sealed class Shortening(Copies copies, Arrangement current, SaleLadder sale, long bound, Rectangles.StepBudget budget)
{
    private const ulong Seed = 7919;
    private const ulong BetweenSeeds = 7777;
    private const long StepsPerDescentAndCopy = 5_000_000;
    private const int MostDescents = 8;
    private const double LeastShrink = 0.001;
    private const int FailsBeforeRest = 2;

    private readonly Separation _separation = new(copies, current, budget);
    private readonly Squeeze _squeeze = new(copies, current);
    private readonly ExactTest _exact = new(copies);

    /// <summary>Shortens <paramref name="best"/>, which is free of overlaps, until the steps are used up or nothing shorter could be sold.</summary>
    public void Run(Arrangement best)
    {
        var descents = new Descent[Math.Clamp(budget.Limit / (StepsPerDescentAndCopy * copies.Count), 1, MostDescents)];
        for (var number = 0; number < descents.Length; number++)
        {
            descents[number] = new Descent(copies, best, Seed + BetweenSeeds * (ulong)number);
        }

        var rounds = 1 + (int)Math.Log2(descents.Length);
        for (var (round, going) = (0, descents.Length); round < rounds; round++, going /= 2)
        {
            var share = (budget.Limit - budget.Spent) / (rounds - round) / going;
            for (var number = 0; number < going; number++)
            {
                Run(descents[number], going == 1 ? budget.Limit : budget.Spent + share);
                if (IsLowest(descents[number].Length))
                {
                    best.CopyFrom(descents[number].Best);
                    return;
                }
            }

            // Insertion keeps equals in order, so that every machine goes on with the same ones.
            for (var number = 1; number < going; number++)
            {
                for (var at = number; at > 0 && descents[at].Length < descents[at - 1].Length; at--)
                {
                    (descents[at], descents[at - 1]) = (descents[at - 1], descents[at]);
                }
            }
        }

        best.CopyFrom(descents[0].Best);
    }

    private void Run(Descent descent, long until)
    {
        current.CopyFrom(descent.Best);
        while (budget.Spent < until && !IsLowest(descent.Length))
        {
            var target = NextTarget(descent);
            if (!_squeeze.Into(target, ref descent.Random))
            {
                return;
            }

            if (_separation.Run(target, ref descent.Random) && _exact.IsApart(current))
            {
                descent.Best.CopyFrom(current);
                (descent.Length, descent.Fails) = (current.Length, 0);
                continue;
            }

            if (++descent.Fails % FailsBeforeRest == 0)
            {
                descent.Shrink = Math.Max(LeastShrink, descent.Shrink / 2);
                current.CopyFrom(descent.Best);
            }

            _squeeze.Swap(target, ref descent.Random);
        }
    }

    private bool IsLowest(double length) => sale.RungFor((long)length) <= sale.RungFor(bound);

    /// <summary>The longest layout that is the wanted share shorter and can be bought cheaper.</summary>
    private long NextTarget(Descent descent)
    {
        var wanted = Math.Max(bound, (long)(descent.Length * (1 - descent.Shrink)));
        return sale.Reach(Math.Min(sale.RungFor(wanted), sale.RungFor((long)descent.Length) - 1));
    }
}
