using System.Diagnostics;
using CushionService.Nesting.Outlines.Placing;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Outlines.Searching;

/// <summary>Shortens a layout. Where one descent ends is much a matter of chance, so a long search begins several, and after each round
/// of equal work drops the longer half, until two are left (sequential halving: Karnin, Koren and Somekh, "Almost optimal exploration in
/// multi-armed bandits", 2013); these compress at the end. Several descents run on two threads. Each counts its own steps, so the answer
/// is the same on one.</summary>
/// <param name="copies">The copies and flaws.</param>
/// <param name="sale">The lengths that can be bought.</param>
/// <param name="bound">A length that no layout can beat, in grid units.</param>
/// <param name="cancellation">Observed by every descent.</param>
internal sealed class Descents(Copies copies, SaleLadder sale, long bound, CancellationToken cancellation)
{
    // Keeps the chances of the descents apart.
    private const ulong BetweenSeeds = 7777;

    /// <summary>The part of the last round's steps that compresses.</summary>
    private const double CompressingShare = 0.2;

    /// <summary>Shortens <paramref name="best"/>, which is free of overlaps.</summary>
    /// <param name="best">Holds the shortest layout afterwards.</param>
    /// <param name="steps">How many steps to spend; a descent that is dropped may finish its try.</param>
    /// <param name="threads">1 or 2.</param>
    /// <param name="seed">Begins the chances of the first descent.</param>
    /// <returns>The steps that were spent.</returns>
    public long Run(Arrangement best, long steps, int threads, ulong seed)
    {
        Debug.Assert(threads is 1 or 2, "a search runs on one thread or on two");
        var descents = new Descent[CountFor(steps)];
        var rounds = Math.Max(1, (int)Math.Log2(descents.Length));
        var mostForOne = 0L;
        for (var (round, going) = (0, descents.Length); round < rounds; round++, going /= 2)
        {
            mostForOne += steps / rounds / going;
        }

        for (var number = 0; number < descents.Length; number++)
        {
            descents[number] = new Descent(
                copies,
                best,
                sale,
                bound,
                new StepBudget(mostForOne, cancellation),
                seed + BetweenSeeds * (ulong)number
            );
        }

        var until = 0L;
        for (var (round, going) = (0, descents.Length); round < rounds; round++, going /= 2)
        {
            var last = round == rounds - 1;
            var share = steps / rounds / going;
            until += share;
            var before = Array.ConvertAll(descents, descent => descent.Spent);
            var exploreUntil = last ? until - (long)(CompressingShare * share) : until;
            var lowest = DescentRound.Run(descents.AsMemory(0, going), exploreUntil, until, threads);
            if (lowest < going)
            {
                best.CopyFrom(descents[lowest].Best);
                return descents.Select((descent, number) => number <= lowest ? descent.Spent : before[number]).Sum();
            }

            SortByLength(descents.AsSpan(0, going));
        }

        best.CopyFrom(descents[0].Best);
        return descents.Sum(descent => descent.Spent);
    }

    /// <summary>How many descents the steps suffice for: a power of two. Two at least as soon as each has enough to get anywhere, for two
    /// threads.</summary>
    /// <param name="steps">All steps of the search.</param>
    private int CountFor(long steps) =>
        (steps / copies.Count) switch
        {
            < 1_000_000 => 1,
            < 20_000_000 => 2,
            < 40_000_000 => 4,
            _ => 8,
        };

    /// <summary>Insertion keeps equals in order, so that every machine goes on with the same ones.</summary>
    /// <param name="descents">The shortest comes first afterwards.</param>
    private static void SortByLength(Span<Descent> descents)
    {
        for (var number = 1; number < descents.Length; number++)
        {
            for (var at = number; at > 0 && descents[at].Length < descents[at - 1].Length; at--)
            {
                (descents[at], descents[at - 1]) = (descents[at - 1], descents[at]);
            }
        }
    }
}
