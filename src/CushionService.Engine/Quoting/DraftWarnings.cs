using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Layouts;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Fillings;

namespace CushionService.Engine.Quoting;

/// <summary>What cannot be made of a draft, and what is allowed but unwise.</summary>
internal static class DraftWarnings
{
    /// <summary>The pieces that no allowed turn fits on their fabric.</summary>
    /// <param name="draft">The drafting.</param>
    /// <returns>One violation a piece, code <c>wider-than-fabric</c>, with the shortfall.</returns>
    public static ImmutableArray<Violation> TooWide(Drafting draft) =>
        [.. draft.Pieces.Where(piece => !FabricNesting.Fits(draft.Fabric(piece), piece)).Select(piece => TooWide(draft, piece))];

    /// <summary>The cushions that cannot be cut: an allowance on both sides of a narrow part meets itself.</summary>
    /// <param name="draft">The drafting.</param>
    /// <returns>One violation a cushion, code <c>not-combinable</c>, at the first of its pieces.</returns>
    public static IEnumerable<Violation> Crossed(Drafting draft) =>
        draft
            .Pieces.Where(piece => piece.Cushion is not null && !CutOutline.IsSimple(piece.Outline))
            .DistinctBy(piece => piece.Pointer)
            .Select(piece => new Violation(piece.Pointer, "not-combinable", DraftTexts.CutLinesCross(piece.Name)));

    /// <summary>What is allowed but unwise: matching, turned prints, closures and stocks.</summary>
    /// <param name="draft">The drafting.</param>
    public static ImmutableArray<Violation> Of(Drafting draft) =>
        [
            .. Unmatched(draft),
            .. Inverted(draft),
            .. TooTight(draft),
            .. Overfilled(draft),
            .. TooShortZippers(draft),
            .. StockFaults.Joined(draft.Order),
            .. StockFaults.Warnings(draft.Order),
            .. StockFaults.TooShort(draft.Order, draft.Patterns),
        ];

    // The overhang is at the best turn that is allowed; the other grain is named where it would help.
    private static Violation TooWide(Drafting draft, CutPiece piece)
    {
        FabricSpecification fabric = draft.Fabric(piece);
        Length narrowest = piece.Rotations == Nesting.Rotations.QuarterTurns ? Length.Min(piece.Width, piece.Length) : piece.Across;
        bool fitsTurned = piece.Cushion is not null && piece.Along <= fabric.UsableWidth;
        Func<PieceName, Length, string, Length, Length, Message> detail =
            !fitsTurned ? DraftTexts.WiderThanFabric
            : piece.IsRailroaded ? DraftTexts.FitsUpTheBolt
            : DraftTexts.FitsRailroaded;
        return new Violation(
            piece.Pointer,
            "wider-than-fabric",
            detail(piece.Name, narrowest, fabric.Name, fabric.UsableWidth, narrowest - fabric.UsableWidth)
        );
    }

    // Only fabric with a repeat can fail to match.
    private static IEnumerable<Violation> Unmatched(Drafting draft) =>
        !draft.Order.Fabrics.Any(static fabric => fabric.Repeat is not null)
            ? []
            : draft.Pieces.Select(piece => MatchNote.Of(piece, draft.Fabric(piece))).OfType<Violation>();

    // A waterfall's main panel runs over the front and under the seat, so that a one-way print is upside down below.
    private static IEnumerable<Violation> Inverted(Drafting draft) =>
        !draft.Order.Fabrics.Any(static fabric => fabric.OneWay)
            ? []
            : draft
                .Pieces.Where(piece => draft.Fabric(piece).OneWay && piece.Panel is { Inverts: true })
                .Select(piece => new Violation(
                    piece.Pointer,
                    "print-inverted",
                    DraftTexts.PrintInverted(draft.Fabric(piece).Name, piece.Name)
                ));

    // Of closed zippers in stock the nearest may be too short; the quote still names it, with this warning.
    private static IEnumerable<Violation> TooShortZippers(Drafting draft)
    {
        foreach ((CushionSpecification cushion, Pattern pattern) in draft.Order.Cushions.Zip(draft.Patterns))
        {
            if (
                cushion.Closure is ZipperClosure
                && ClosedZipper.For(cushion, InnerCover.Apart(pattern).Cover, draft.Order.Stocks) is { IsTooShort: true } zipper
            )
            {
                yield return new Violation(
                    $"{cushion.Pointer}/closure",
                    "zipper-too-short",
                    DraftTexts.ZipperTooShort(cushion.Name, zipper.Room, zipper.Stock.Name, zipper.Opening, zipper.Shortfall)
                );
            }
        }
    }

    // A block of foam is put in through the closure; a loose fill is poured.
    private static IEnumerable<Violation> TooTight(Drafting draft) =>
        draft.Order.Cushions.Any(static cushion => cushion.Fill?.Kind == FillKind.Foam) ? TooTightClosures(draft) : [];

    // A weight that the order names is bought as it is, even when no cover would hold it.
    private static IEnumerable<Violation> Overfilled(Drafting draft)
    {
        foreach (CushionSpecification cushion in draft.Order.Cushions)
        {
            if (
                cushion.Fill is { Weight: { } weight, Density: { } density }
                && Filling.Most(cushion, density) is var most
                && weight.Grams > most.Grams
            )
            {
                yield return new Violation(
                    $"{cushion.Pointer}/fill/weight",
                    "overfilled",
                    DraftTexts.Overfilled(weight, cushion.Name, Math.Round(most.Kilograms, 3, MidpointRounding.ToZero), weight.Kilograms)
                );
            }
        }
    }

    // Only the outer cover is measured: it has the closure that the order gives.
    private static IEnumerable<Violation> TooTightClosures(Drafting draft)
    {
        foreach ((CushionSpecification cushion, Pattern pattern) in draft.Order.Cushions.Zip(draft.Patterns))
        {
            if (cushion.Fill?.Kind != FillKind.Foam)
            {
                continue;
            }

            Length opening = OpeningTest.Opening(cushion, InnerCover.Apart(pattern).Cover, draft.Order.Stocks),
                needed = FoamPassage.Needed(cushion, draft.Order.Stocks);
            if (opening < needed)
            {
                yield return new Violation(
                    $"{cushion.Pointer}/closure",
                    "opening-too-small",
                    DraftTexts.OpeningTooSmall(opening, FoamPassage.Folds(cushion, draft.Order.Stocks), needed)
                );
            }
        }
    }
}
