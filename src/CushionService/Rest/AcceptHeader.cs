using Microsoft.Extensions.Primitives;
using Microsoft.Net.Http.Headers;

namespace CushionService.Rest;

/// <summary>Chooses among the media types of an answer by what a caller accepts (RFC 9110, section 12.5.1).</summary>
internal static class AcceptHeader
{
    // Media types are compared without regard to case (RFC 9110, section 8.3.1).
    private const StringComparison IgnoreCase = StringComparison.OrdinalIgnoreCase;

    /// <summary>The offered type that the caller prefers. Of equals, the first on offer.</summary>
    /// <param name="accept">The header; an absent one means anything. What cannot be parsed accepts nothing.</param>
    /// <param name="offered">The types on offer, ours first.</param>
    /// <returns>The index of the type; -1 when the caller accepts none.</returns>
    public static int Choose(StringValues accept, ReadOnlySpan<string> offered)
    {
        // What nearly every caller sends, without parsing it.
        if (StringValues.IsNullOrEmpty(accept) || (accept.Count == 1 && (accept[0] == "*/*" || accept[0] == offered[0])))
        {
            return 0;
        }

        int best = -1;
        double quality = 0;
        if (MediaTypeHeaderValue.TryParseList(accept, out IList<MediaTypeHeaderValue>? ranges))
        {
            // Only a higher quality wins, so that of equals the form that we offer first is answered with.
            for (int i = 0; i < offered.Length; i++)
            {
                double q = QualityOf(offered[i], ranges);
                if (q > quality)
                {
                    (best, quality) = (i, q);
                }
            }
        }

        return best;
    }

    // From 0 to 1; 0 means not acceptable. The most specific range that matches decides, not the one of the highest
    // quality.
    private static double QualityOf(string offered, IList<MediaTypeHeaderValue> ranges)
    {
        MediaTypeHeaderValue type = MediaTypeHeaderValue.Parse(offered);
        (int Rank, double Quality) best = (-1, 0);
        foreach (MediaTypeHeaderValue range in ranges)
        {
            int rank =
                range.MatchesAllTypes ? 0
                : range.MatchesAllSubTypes ? 1
                : 2;
            bool matches =
                rank == 0 || (rank == 1 ? range.Type.Equals(type.Type, IgnoreCase) : range.MediaType.Equals(type.MediaType, IgnoreCase));
            if (matches && rank > best.Rank)
            {
                best = (rank, range.Quality ?? 1);
            }
        }

        return best.Quality;
    }
}
