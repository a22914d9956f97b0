using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Layouts;

/// <summary>Cuts the positions across at which a motif may be into spans, at each position where a matched piece begins or ceases to fit
/// in a column.</summary>
/// <remarks>A piece of width w whose corner lies at phase a has its first column at (u + a) mod W for a motif at u. A column appears at the
/// left edge where that is 0, and the last one is lost where it is (F − w) mod W, for a usable width F (follows from the repeat). Within a
/// span the columns of all pieces move across together.</remarks>
internal static class MotifSpans
{
    /// <summary>The spans; a single position where nothing repeats across or the motif is known.</summary>
    /// <param name="fabric">A fabric with a repeat.</param>
    /// <param name="pieces">Its pieces.</param>
    /// <param name="most">How many spans are wanted at most. More are made where a piece would else go unmatched at positions where it
    /// can be matched.</param>
    public static ImmutableArray<MotifSpan> Of(FabricSpecification fabric, IReadOnlyList<CutPiece> pieces, int most)
    {
        RepeatSpecification repeat = fabric.LaidRepeat!;
        if (!repeat.IsUnknownAcross)
        {
            return [new MotifSpan(repeat.MotifX ?? Length.Zero, Length.Zero)];
        }

        Length width = repeat.Width!.Value;
        var columns = pieces
            .Where(piece => piece.Panel?.Match is not null)
            .Select(piece => new Column(MotifMatch.Corner(piece, fabric, default)!.Value.X, piece.Across))
            .Distinct()
            .ToArray();
        // Where the motif is known along, the columns beside each other on a drop are not the same.
        int periods = repeat.DropLength > Length.Zero && !repeat.IsUnknownAlong ? 2 : 1;
        var cuts = new SortedSet<long> { 0, periods * width.Nanometres };
        foreach (Column column in columns)
        {
            for (var period = 0; period < periods; period++)
            {
                cuts.Add((MotifMatch.Modulo(-column.Phase, width) + period * width).Nanometres);
                cuts.Add((MotifMatch.Modulo(fabric.UsableWidth - column.Across - column.Phase, width) + period * width).Nanometres);
            }
        }

        var spans = cuts.Zip(cuts.Skip(1), (from, to) => new MotifSpan(Length.FromNanometres(from), Length.FromNanometres(to - from)))
            .ToList();
        bool[] FitsOf(MotifSpan span) => [.. columns.Select(column => column.Fits(span, fabric.UsableWidth, width))];
        Merge(spans, most, FitsOf);
        return [.. spans, .. Between(spans, cuts, FitsOf)];
    }

    // Single positions at which more pieces fit than in the spans that meet there: one fits just still, and another just already.
    private static IEnumerable<MotifSpan> Between(List<MotifSpan> spans, SortedSet<long> cuts, Func<MotifSpan, bool[]> fits) =>
        cuts.Select(cut => new MotifSpan(Length.FromNanometres(cut), Length.Zero))
            .Where(single =>
                spans.All(span => single.From < span.From || single.From > span.To || !fits(span).SequenceEqual(fits(single)))
            );

    // The narrowest neighbours first. Two are one span only where that leaves every piece as it is in each of them.
    private static void Merge(List<MotifSpan> spans, int most, Func<MotifSpan, bool[]> fits)
    {
        while (spans.Count > most)
        {
            (int At, MotifSpan Span)? best = null;
            for (var i = 0; i + 1 < spans.Count; i++)
            {
                var both = new MotifSpan(spans[i].From, spans[i].Over + spans[i + 1].Over);
                bool narrower = best is not { } known || both.Over < known.Span.Over;
                if (narrower && fits(both).SequenceEqual(fits(spans[i])) && fits(both).SequenceEqual(fits(spans[i + 1])))
                {
                    best = (i, both);
                }
            }

            if (best is not { } merged)
            {
                return;
            }

            spans[merged.At] = merged.Span;
            spans.RemoveAt(merged.At + 1);
        }
    }

    // Pieces of one width and phase come and go in columns together, whatever their length.
    private readonly record struct Column(Length Phase, Length Across)
    {
        public bool Fits(MotifSpan span, Length usable, Length repeat) =>
            MotifMatch.Modulo(span.From + Phase, repeat) + Across <= usable - span.Over;
    }
}
