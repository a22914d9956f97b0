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

    // Thirty-two kilobytes.
    private const int MostOnStack = 4096;

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
        across = across[..DualFunctions.For(set, set.Width, ofLength: false, across)];
        along = along[..DualFunctions.For(set, length, ofLength: true, along)];
        budget.Spend((long)(across.Length + along.Length) * set.Kinds);
        for (var kind = 0; kind < set.Kinds; kind++)
        {
            if (!set.FitsUpright(kind, length) && !set.FitsTurned(kind, length))
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
        int size = DualNumbers.SizeFor(across.Length + along.Length, set);
        Span<long> rows = size <= MostOnStack ? stackalloc long[size] : new long[size];
        var widths = new DualNumbers(across, set, rows);
        var lengths = new DualNumbers(along, set, rows[DualNumbers.SizeFor(across.Length, set)..]);
        widths.Number(length, ofLength: false);
        lengths.Number(length, ofLength: true);
        for (var f = 0; f < widths.Count; f++)
        {
            if (budget.Spent >= end)
            {
                return null;
            }

            for (var g = 0; g < lengths.Count; g++)
            {
                T need = set.MayTurn
                    ? Least<T>(widths.Upright(f), lengths.Upright(g), widths.Turned(f), lengths.Turned(g))
                    : Sum<T>(widths.Upright(f), lengths.Upright(g));
                budget.Spend(kinds);
                T most = T.CreateTruncating(widths.Whole(f)) * T.CreateTruncating(lengths.Whole(g));
                if (need > most)
                {
                    (DualFunction ofWidth, DualFunction ofLength) = (widths.Function(f), lengths.Function(g));
                    return string.Create(
                        CultureInfo.InvariantCulture,
                        $"{ofWidth} across and {ofLength} along need {need} of the {most} that {set.Width} by {length} has"
                    );
                }
            }
        }

        return null;
    }

    /// <summary>What all copies need of the area, where none turns.</summary>
    private T Sum<T>(ReadOnlySpan<long> across, ReadOnlySpan<long> along)
        where T : struct, IBinaryInteger<T>
    {
        T need = T.Zero;
        for (var kind = 0; kind < across.Length; kind++)
        {
            need += T.CreateTruncating(across[kind]) * T.CreateTruncating(along[kind]) * T.CreateTruncating(set.Count[kind]);
        }

        return need;
    }

    /// <summary>What all copies need of the area at least, each in the turn where that is least.</summary>
    private T Least<T>(ReadOnlySpan<long> across, ReadOnlySpan<long> along, ReadOnlySpan<long> acrossTurned, ReadOnlySpan<long> alongTurned)
        where T : struct, IBinaryInteger<T>
    {
        T need = T.Zero;
        for (var kind = 0; kind < across.Length; kind++)
        {
            T upright = T.CreateTruncating(across[kind]) * T.CreateTruncating(along[kind]);
            T turned = T.CreateTruncating(acrossTurned[kind]) * T.CreateTruncating(alongTurned[kind]);
            need += T.Min(upright, turned) * T.CreateTruncating(set.Count[kind]);
        }

        return need;
    }
}
