using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Fitting;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Nesting;

namespace CushionService.Desk;

/// <summary>Holds an order against the fabric on hand with its strips and faces joined to suit one width on hand after another, the widest
/// first: what is joined for a wide scrap may fit nowhere, and what is joined for a narrower length may fit on that.</summary>
/// <param name="specified">The order; its grain runs one way.</param>
/// <param name="warnings">What is unwise in it.</param>
/// <param name="effort">How hard each is searched.</param>
/// <param name="sharedBy">How many fits share the effort's steps.</param>
/// <param name="cancellation">Cancels the search.</param>
internal sealed class FitWidths(
    OrderSpecification specified,
    ImmutableArray<Violation> warnings,
    Effort effort,
    int sharedBy,
    CancellationToken cancellation
)
{
    // Draftings that are laid at most; those with the same pieces are one.
    private const int MostQuick = 3;
    private const int Most = 4;

    private readonly ImmutableArray<FabricSpecification>[] _widths = [.. specified.Fabrics.Select(OffcutRoom.Widths)];

    private int _trials;

    /// <summary>The first way in which all fits; else the one that shows least against it.</summary>
    /// <returns>Impossible only where that holds for every width.</returns>
    /// <exception cref="OperationCanceledException">The search was cancelled.</exception>
    public Fit Best()
    {
        FabricSpecification[] joined = [.. _widths.Select(widths => widths[0])];
        Fit best = Laid(Drafted(joined));
        for (var at = 0; at < joined.Length; at++)
        {
            if (VerdictOf(best, at) == FitVerdict.Fits)
            {
                continue;
            }

            List<Drafting> seen = [best.Drafting];
            foreach (FabricSpecification width in _widths[at].Skip(1))
            {
                FabricSpecification[] narrower = [.. joined];
                narrower[at] = width;
                Drafting drafting = Drafted(narrower);
                if (seen.Any(other => HasSamePieces(drafting, other)))
                {
                    continue;
                }

                if (_trials >= (effort == Effort.Quick ? MostQuick : Most))
                {
                    // What was not tried is not impossible.
                    best = NotProven(best, at);
                    break;
                }

                seen.Add(drafting);
                Fit fit = Laid(drafting);
                // Of equals the first stays: the fewest joins.
                if (Against(fit, at) < Against(best, at))
                {
                    (best, joined) = (fit, narrower);
                }

                if (VerdictOf(best, at) == FitVerdict.Fits)
                {
                    break;
                }
            }
        }

        return best with
        {
            Trials = _trials,
        };
    }

    private Drafting Drafted(IEnumerable<FabricSpecification> joined) =>
        Drafting.Of(specified with { Fabrics = [.. joined] }, sharedBy, cancellation);

    private Fit Laid(Drafting drafting)
    {
        _trials++;
        return Fit.Of(
            specified,
            drafting,
            warnings,
            (fabric, pieces, fabrics) => OffcutFit.Of(fabric, pieces, effort, sharedBy * fabrics, cancellation)
        );
    }

    // A fabric of which nothing is cut, or that is to be bought, is no obstacle.
    private FitVerdict VerdictOf(Fit fit, int fabric) =>
        fit.Fabrics.FirstOrDefault(one => one.Fabric.Id == specified.Fabrics[fabric].Id)?.Verdict ?? FitVerdict.Fits;

    // What shows against it: nothing, that no layout was found, or that there is none.
    private int Against(Fit fit, int fabric) =>
        VerdictOf(fit, fabric) switch
        {
            FitVerdict.Fits => 0,
            FitVerdict.NotFound => 1,
            _ => 2,
        };

    private Fit NotProven(Fit fit, int fabric) =>
        fit with
        {
            Fabrics =
            [
                .. fit.Fabrics.Select(one =>
                    one.Fabric.Id == specified.Fabrics[fabric].Id && one.Verdict == FitVerdict.Impossible
                        ? one with
                        {
                            Verdict = FitVerdict.NotFound,
                        }
                        : one
                ),
            ],
        };

    /// <summary>Whether two draftings of an order are cut into the same pieces.</summary>
    /// <param name="one">A drafting.</param>
    /// <param name="other">The same order drafted for another width.</param>
    public static bool HasSamePieces(Drafting one, Drafting other) =>
        one.Pieces.Length == other.Pieces.Length && one.Pieces.Zip(other.Pieces).All(pair => IsSame(pair.First, pair.Second));

    private static bool IsSame(CutPiece one, CutPiece other) =>
        one.Id == other.Id
        && one.Quantity == other.Quantity
        && one.Across == other.Across
        && one.Along == other.Along
        && one.Rotations == other.Rotations
        && one.Outline.SequenceEqual(other.Outline);
}
