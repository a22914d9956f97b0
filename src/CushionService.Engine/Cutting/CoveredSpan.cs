using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;

namespace CushionService.Engine.Cutting;

/// <summary>A span of a strip that a handle or a pocket is sewn onto: a join under it would be a lump, and would part its ends.</summary>
/// <param name="From">Where it begins, from the strip's start, less a seam allowance.</param>
/// <param name="To">Where it ends, with a seam allowance more.</param>
/// <remarks>Common practice, no source.</remarks>
internal readonly record struct CoveredSpan(Length From, Length To)
{
    /// <summary>Whether a join lies in it.</summary>
    /// <param name="join">From the strip's start.</param>
    public bool Holds(Length join) => From < join && join < To;

    /// <summary>The spans of a panel.</summary>
    /// <param name="panel">A strip with its marks.</param>
    /// <param name="seam">Seam allowance of its joins, which must not lie under them either.</param>
    public static ImmutableArray<CoveredSpan> Of(Panel panel, Length seam) =>
        panel.Marks.IsEmpty
            ? []
            :
            [
                // Marks of a handle are in pairs, one for each end; all lines of a pocket are one span.
                .. panel.Marks.Where(mark => mark.Purpose == MarkPurpose.SewHandleEnd).Chunk(2).Select(ends => Around(ends, seam)),
                .. panel
                    .Marks.Where(mark => mark.Purpose == MarkPurpose.SewPocket)
                    .GroupBy(mark => mark.Purpose)
                    .Select(lines => Around(lines, seam)),
            ];

    /// <summary>Moves each join that lies in a span to the nearer end of it, where the pieces stay as long as the fabric allows.</summary>
    /// <param name="joins">Joins as finished distances from the strip's start, in order.</param>
    /// <param name="spans">The spans.</param>
    /// <param name="total">Finished length of the strip.</param>
    /// <param name="most">Longest finished piece.</param>
    /// <returns>The joins; one stays where neither end of its span will do.</returns>
    public static ImmutableArray<Length> Clear(ImmutableArray<Length> joins, ImmutableArray<CoveredSpan> spans, Length total, Length most)
    {
        for (var i = 0; i < joins.Length; i++)
        {
            Length join = joins[i],
                before = i == 0 ? Length.Zero : joins[i - 1],
                after = i == joins.Length - 1 ? total : joins[i + 1];
            foreach (CoveredSpan span in spans.Where(span => span.Holds(join)))
            {
                // The nearer end first; of equals the one towards the strip's start.
                Length[] ends = join - span.From <= span.To - join ? [span.From, span.To] : [span.To, span.From];
                joins = joins.SetItem(i, ends.Where(Allowed).DefaultIfEmpty(join).First());
            }

            bool Allowed(Length end) =>
                end > before && end < after && end - before <= most && after - end <= most && !spans.Any(span => span.Holds(end));
        }

        return joins;
    }

    private static CoveredSpan Around(IEnumerable<PanelMark> marks, Length seam)
    {
        Length[] ends = [.. marks.SelectMany(mark => new[] { mark.From.X, (mark.To ?? mark.From).X })];
        return new CoveredSpan(ends.Min() - seam, ends.Max() + seam);
    }
}
