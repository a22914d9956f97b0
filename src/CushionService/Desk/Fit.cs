using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Fitting;
using CushionService.Engine.Layouts;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Nesting;

namespace CushionService.Desk;

/// <summary>How an order fits onto the fabric on hand.</summary>
/// <param name="Drafting">The order, drafted for the fabric on hand.</param>
/// <param name="Fabrics">Each fabric that is on hand, with the layout of its pieces. Fabrics to be bought are not among
/// them.</param>
/// <param name="Warnings">What is allowed but unwise.</param>
internal sealed record Fit(Drafting Drafting, ImmutableArray<OffcutFit> Fabrics, ImmutableArray<Violation> Warnings)
{
    /// <summary>Whether everything fits; if not, whether that is proven by a bound, or the search has only not found a
    /// layout.</summary>
    public FitVerdict Verdict =>
        Fabrics.Any(fabric => fabric.Verdict == FitVerdict.Impossible) ? FitVerdict.Impossible
        : Fabrics.Any(fabric => fabric.Verdict == FitVerdict.NotFound) ? FitVerdict.NotFound
        : FitVerdict.Fits;

    /// <summary>How many draftings were laid to find it: one for each width with which strips and faces were joined.</summary>
    public int Trials { get; init; } = 1;

    /// <summary>Lays an order onto the fabric on hand; where its fabric may run either way, first up the bolt, then railroaded. Strips and
    /// faces are joined to suit the widest piece on hand, and where that is in vain a narrower one.</summary>
    /// <param name="specified">The order.</param>
    /// <param name="warnings">What is unwise in it.</param>
    /// <param name="effort">How many steps the search may take.</param>
    /// <param name="sharedBy">How many fits share those steps, so that many trials take as long as one.</param>
    /// <param name="cancellation">Cancels the search.</param>
    /// <exception cref="OperationCanceledException">The search was cancelled.</exception>
    public static Fit Of(
        OrderSpecification specified,
        ImmutableArray<Violation> warnings,
        Effort effort,
        int sharedBy,
        CancellationToken cancellation
    )
    {
        ImmutableArray<OrderSpecification> trials = GrainTrials.Of(specified);
        Fit best = new FitWidths(trials[0], warnings, effort, sharedBy * trials.Length, cancellation).Best();
        foreach (OrderSpecification trial in best.Verdict == FitVerdict.Fits ? [] : trials[1..])
        {
            // Impossible in one way is not impossible: the answer is then that of another way.
            Fit fit = new FitWidths(trial, warnings, effort, sharedBy * trials.Length, cancellation).Best();
            best = fit.Verdict == FitVerdict.Fits || best.Verdict == FitVerdict.Impossible ? fit : best;
        }

        return best;
    }

    /// <summary>The same, with as many whole cushions as are found to fit where nothing was laid of a large order.</summary>
    public Fit Filled(int sharedBy, CancellationToken cancellation) =>
        this with
        {
            Fabrics = [.. Fabrics.Select(fabric => fabric.Filled(Effort.Quick, sharedBy, cancellation))],
        };

    /// <summary>Lays pieces that are drafted onto the fabric on hand.</summary>
    /// <param name="specified">The order; its grain runs one way.</param>
    /// <param name="drafting">The same, drafted.</param>
    /// <param name="warnings">What is unwise in it.</param>
    /// <param name="layOnto">Lays the pieces of a fabric; told how many fabrics are on hand.</param>
    public static Fit Of(
        OrderSpecification specified,
        Drafting drafting,
        ImmutableArray<Violation> warnings,
        Func<FabricSpecification, ImmutableArray<CutPiece>, int, OffcutFit> layOnto
    )
    {
        var unknown = ImmutableArray.CreateBuilder<Violation>();
        var fits = ImmutableArray.CreateBuilder<OffcutFit>();
        foreach (FabricSpecification fabric in specified.Fabrics.Where(fabric => !fabric.OnHand.IsEmpty))
        {
            ImmutableArray<CutPiece> pieces = [.. drafting.Pieces.Where(piece => piece.Fabric == fabric.Id)];
            if (!pieces.IsEmpty)
            {
                if (OffcutMotif.Of(fabric, pieces) is { } note)
                {
                    unknown.Add(note);
                }

                fits.Add(layOnto(fabric, pieces, specified.Fabrics.Count(used => !used.OnHand.IsEmpty)));
            }
        }

        IEnumerable<Violation> split = fits.SelectMany(fit => fit.Split.Select(cushion => cushion.Said(fit.Fabric.Name)));
        IEnumerable<Violation> unmatched = fits.SelectMany(fit => fit.Layouts).SelectMany(Unmatched).Except(drafting.Warnings).Distinct();
        return new Fit(drafting, fits.ToImmutable(), [.. warnings, .. drafting.Warnings, .. unmatched, .. unknown, .. split]);
    }

    // A piece that finds its motif anywhere on the widest offcut may not on the one that it lies on.
    private static IEnumerable<Violation> Unmatched(OffcutLayout layout) =>
        layout
            .Placements.DistinctBy(laid => laid.Piece.Id)
            .Select(laid => MatchNote.Of(laid.Piece, layout.Room.Fabric))
            .OfType<Violation>();
}
