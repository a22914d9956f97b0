using System.Globalization;
using System.Numerics;
using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>Proves by dual feasible functions that rectangles do not fit: a product of two, one for each axis, is an area that no layout
/// exceeds. A rectangle that may turn counts in the turn where it is least.</summary>
/// <param name="set">All copies.</param>
/// <remarks>Fekete and Schepers, "A general framework for bounds for higher-dimensional orthogonal
/// packing problems" (2004): of two functions f and g, the numbers f(w) g(l) of rectangles that fit
/// side by side never add up to more than f(W) g(L). All pairs of the functions of
/// <see cref="DualFunctions"/> are tried.</remarks>
internal sealed class DualFeasible(RectangleSet set)
{
    // All pairs of functions of more kinds take longer than a page can wait.
    private const int MostKinds = 24;

    // Of the steps that are left, one part in this many goes into pairs at most; and as many steps in any case as a few hundred thousand
    // comparisons take, which is nothing that a caller would notice.
    private const int ForPairs = 2;
    private const long LeastForPairs = 100_000;

    // Eight kilobytes.
    private const int MostOnStack = 1024;

    /// <summary>An argument that the copies do not fit the strip up to a length; null when none is found.</summary>
    /// <param name="length">In grid units, above 0.</param>
    /// <param name="budget">Pays for the pairs and kinds.</param>
    /// <returns>The figures in one line.</returns>
    public string? RulesOut(long length, StepBudget budget)
    {
        if (set.Kinds > MostKinds)
        {
            return null;
        }

        Span<DualFunction> across = stackalloc DualFunction[DualFunctions.MostFor(set.Kinds)],
            along = stackalloc DualFunction[across.Length];
        across = across[..DualFunctions.For(set, set.Width, across)];
        along = along[..DualFunctions.For(set, length, along)];
        budget.Spend((long)(across.Length + along.Length) * set.Kinds);
        for (var kind = 0; kind < set.Kinds; kind++)
        {
            if (!FitsUpright(kind, length) && !FitsTurned(kind, length))
            {
                return string.Create(
                    CultureInfo.InvariantCulture,
                    $"{set.Across[kind]} by {set.Along[kind]} does not fit {set.Width} by {length}"
                );
            }
        }

        // Sums of products: 64 bits hold them on all but the finest grids.
        Int128 most = (Int128)set.Width * length * DualFunction.MostMultiple * DualFunction.MostMultiple * set.Copies;
        return most <= long.MaxValue ? RulesOut<long>(across, along, length, budget) : RulesOut<Int128>(across, along, length, budget);
    }

    /// <summary>Tries all pairs, with numbers that are wide enough for their products.</summary>
    /// <typeparam name="T">64 bits where all sums fit them, else 128.</typeparam>
    /// <param name="across">Functions of the width.</param>
    /// <param name="along">Functions of the length.</param>
    /// <param name="length">In grid units.</param>
    /// <param name="budget">Pays a step for each kind of each pair.</param>
    private string? RulesOut<T>(Span<DualFunction> across, Span<DualFunction> along, long length, StepBudget budget)
        where T : struct, IBinaryInteger<T>
    {
        int kinds = set.Kinds;
        long end = budget.Spent + Math.Max(LeastForPairs, (budget.Limit - budget.Spent) / ForPairs);
        bool turns = Array.IndexOf(set.Turns, true) >= 0;
        int size = 2 * kinds * (along.Length + 1);
        Span<long> numbers = size <= MostOnStack ? stackalloc long[size] : new long[size];
        // One block for all numbers: those of a function across, and those of every function along, once for each turn.
        Span<long> upright = numbers[..kinds],
            turned = numbers[kinds..(2 * kinds)],
            alongUpright = numbers[(2 * kinds)..((2 + along.Length) * kinds)];
        Span<long> alongTurned = numbers[((2 + along.Length) * kinds)..];
        for (var g = 0; g < along.Length; g++)
        {
            Number(along[g], set.Along, set.Across, length, length, alongUpright[(g * kinds)..], alongTurned[(g * kinds)..]);
        }

        foreach (DualFunction f in across)
        {
            if (budget.Spent >= end)
            {
                return null;
            }

            Number(f, set.Across, set.Along, set.Width, length, upright, turned);
            T roomAcross = T.CreateTruncating(f.Of(set.Width, set.Width));
            for (var g = 0; g < along.Length; g++)
            {
                T need = T.Zero;
                ReadOnlySpan<long> uprightAlong = alongUpright.Slice(g * kinds, kinds),
                    turnedAlong = alongTurned.Slice(g * kinds, kinds);
                for (var kind = 0; kind < uprightAlong.Length; kind++)
                {
                    T least = T.CreateTruncating(upright[kind]) * T.CreateTruncating(uprightAlong[kind]);
                    if (turns)
                    {
                        least = T.Min(least, T.CreateTruncating(turned[kind]) * T.CreateTruncating(turnedAlong[kind]));
                    }

                    need += least * T.CreateTruncating(set.Count[kind]);
                }

                budget.Spend(kinds);
                T room = roomAcross * T.CreateTruncating(along[g].Of(length, length));
                if (need > room)
                {
                    return string.Create(
                        CultureInfo.InvariantCulture,
                        $"{f} across and {along[g]} along need {need} of the {room} that {set.Width} by {length} has"
                    );
                }
            }
        }

        return null;
    }

    // A kind that fits in one turn only has that turn's numbers in both places.
    private void Number(
        DualFunction function,
        long[] uprightExtents,
        long[] turnedExtents,
        long whole,
        long length,
        Span<long> upright,
        Span<long> turned
    )
    {
        for (var kind = 0; kind < set.Kinds; kind++)
        {
            bool fits = FitsUpright(kind, length),
                fitsTurned = FitsTurned(kind, length);
            upright[kind] = function.Of(fits ? uprightExtents[kind] : turnedExtents[kind], whole);
            turned[kind] = fits && !fitsTurned ? upright[kind] : function.Of(turnedExtents[kind], whole);
        }
    }

    /// <summary>Whether a kind fits the strip as it is kept.</summary>
    private bool FitsUpright(int kind, long length) => set.Across[kind] <= set.Width && set.Along[kind] <= length;

    /// <summary>Whether a kind may turn and then fits.</summary>
    private bool FitsTurned(int kind, long length) => set.Turns[kind] && set.Along[kind] <= set.Width && set.Across[kind] <= length;
}
