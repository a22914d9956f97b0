using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Engine.Fitting;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Intake;
using CushionService.Nesting;

namespace CushionService.Desk;

/// <summary>Finds how large each cushion of an order could be on the fabric on hand. Every size is drafted, cut and
/// laid by the pipeline of any order.</summary>
internal static class LargestCushions
{
    // Each size that is tried is an order of its own: more cushions would keep a page waiting.
    private const int Most = 4;

    // Three trials for each of a dozen ways to size cushions share the steps of one search at most: a thorough one, or a standard one for
    // an order that is searched in less.
    private const int WaysSharing = 36;

    /// <summary>The largest cushions of an order that keeps its rules.</summary>
    /// <remarks>Quick searches find the size roughly, and longer ones decide at its boundary. A size counts in whole
    /// cutting steps, since no other can be cut.</remarks>
    /// <param name="order">The order as it was sent, with fabric on hand.</param>
    /// <param name="specified">The same, specified.</param>
    /// <param name="fit">How the order fits as it is: a larger cushion that loses its match is no answer to it.</param>
    /// <param name="steps">What the searches share.</param>
    /// <param name="cancellation">Cancels the search.</param>
    /// <returns>For each of the first four cushions and each way to size it, the largest that fits; nothing where none
    /// fits.</returns>
    /// <exception cref="OperationCanceledException">The search was cancelled, while the sequence was read.</exception>
    public static IEnumerable<LargestAnswer> Of(
        Order order,
        OrderSpecification specified,
        Fit fit,
        FitSteps steps,
        CancellationToken cancellation
    )
    {
        // On hides each of the hundreds of sizes that are tried would take a whole search.
        if (specified.Fabrics.Any(fabric => fabric.OnHand.Any(offcut => !offcut.Outline.IsEmpty)))
        {
            yield break;
        }

        Effort deciding = specified.Effort is Effort.Quick or Effort.Standard ? Effort.Standard : Effort.Thorough;
        (int At, FreeSize Free, SizedCushion Sizes)[] ways =
        [
            .. Enumerable
                .Range(0, Math.Min(order.Cushions?.Count ?? 0, Most))
                .SelectMany(at => SizedCushion.Ways(order, specified, at).Select(way => (at, way.Item1, way.Item2))),
        ];
        (int rough, int exact) = (steps.Sizes(ways.Length), Math.Max(WaysSharing, steps.Deciding(ways.Length, deciding)));
        foreach ((int at, FreeSize free, SizedCushion sizes) in ways)
        {
            var found = LargestStep.Find(
                sizes.Steps,
                size => Verdict(sizes.At(size), Effort.Quick, rough) == FitVerdict.Fits,
                size => Verdict(sizes.At(size), deciding, exact)
            );
            // The answer names the size in the order's unit; it is a whole number of cutting steps, so it can be cut as it
            // is read.
            if (found is var (largest, next))
            {
                (Length width, Length depth) = sizes.SizesAt(largest);
                yield return new LargestAnswer
                {
                    Cushion = order.Cushions![at].Id!,
                    Free = free,
                    Width = (double)width.In(specified.Unit),
                    Depth = (double)depth.In(specified.Unit),
                    Next = next,
                };
            }
        }

        // Whether the order with that size fits. A size that breaks a rule cannot be made, whatever fabric there is.
        FitVerdict Verdict(Order sized, Effort effort, int sharedBy)
        {
            if (OrderIntake.Read(sized, specified.PriceBook, Purpose.Fitting) is not { Specification: { } whole } intake)
            {
                return FitVerdict.Impossible;
            }

            Fit tried = Fit.Of(whole, intake.Warnings, effort, sharedBy, cancellation);
            return tried.Warnings.Count(MatchNote.IsTooWide) > fit.Warnings.Count(MatchNote.IsTooWide)
                ? FitVerdict.Impossible
                : tried.Verdict;
        }
    }
}
