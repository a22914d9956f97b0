using System.Collections.Immutable;
using CushionService.Contract.Answers;
using CushionService.Engine.Fitting;
using CushionService.Engine.Layouts;
using CushionService.Engine.Quoting;
using CushionService.Intake;
using CushionService.Metrics;
using CushionService.Wording;

namespace CushionService.Desk;

/// <summary>Every purpose that an order is sent for, with the method that answers it. REST, gRPC and streams choose
/// from this list.</summary>
/// <remarks>A method gets an order whose rules have been checked, and makes one record of the contract of it. Its
/// lengths are numbers in the order's unit. It throws when the search is cancelled, and keeps nothing.</remarks>
internal static class Purposes
{
    /// <summary>Whether the order can be made, down to whether every piece fits its fabric.</summary>
    public static Purpose<ValidationAnswer> Validation { get; } =
        new(Purpose.Making, Validate, AnswersUnsound: true) { UsualEffort = null };

    /// <summary>The same, for a caller that asks nothing more: an order that cannot be made is refused.</summary>
    public static Purpose<ValidationAnswer> Check { get; } = new(Purpose.Making, Validate) { UsualEffort = null };

    /// <summary>What to cut, mark and sew together.</summary>
    public static Purpose<PiecesAnswer> Pieces { get; } = new(Purpose.Making, ListPieces) { UsualEffort = null };

    /// <summary>A layout for each fabric.</summary>
    public static Purpose<LayoutsAnswer> Layout { get; } = new(Purpose.Making, LayOut);

    /// <summary>How much of each fabric to buy.</summary>
    public static Purpose<YardageAnswer> Yardage { get; } = new(Purpose.Making, EstimateYardage);

    /// <summary>How much fabric to buy for one cushion of one fabric.</summary>
    public static Purpose<EstimateAnswer> Estimate { get; } = new(Purpose.Making, EstimateOneFabric);

    /// <summary>Pieces, layouts, materials, cost, steps and cautions.</summary>
    public static Purpose<QuoteAnswer> Quote { get; } = new(Purpose.Making, QuoteAll);

    /// <summary>The order with other fabrics instead of its own, cheapest first.</summary>
    public static Purpose<ComparisonAnswer> Comparison { get; } =
        new(Purpose.Comparing, static (order, cancellation) => Desk.Comparison.Of(order, cancellation));

    /// <summary>Whether the order can be cut from the fabric on hand.</summary>
    public static Purpose<FitAnswer> Fit { get; } = new(Purpose.Fitting, FitOnHand);

    // Whatever the checks found is the answer. Nothing is laid out.
    private static ValidationAnswer Validate(CheckedOrder order, CancellationToken cancellation) =>
        new()
        {
            Valid = order.Violations.IsEmpty,
            Violations = ViolationWording.Of(order.Violations, order.Language, order.Unit),
            Warnings = ViolationWording.Of(order.Warnings, order.Language, order.Unit),
        };

    // The pieces are drafted already; wording thousands of them is worth a look at the deadline.
    private static PiecesAnswer ListPieces(CheckedOrder order, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        AnswerWording words = WordsOf(order);
        return new PiecesAnswer
        {
            Reference = order.Order.Reference,
            Units = order.Order.Units!.Value,
            Engine = EngineVersion.Current,
            Cushions = words.Cushions(order.Drafting),
            Pieces = words.Pieces(order.Drafting),
            Seams = words.Seams(order.Drafting),
            Warnings = words.Warnings,
        };
    }

    // The pieces come along, since a placement names its piece and a drawing shows its shape.
    private static LayoutsAnswer LayOut(CheckedOrder order, CancellationToken cancellation)
    {
        AnswerWording words = WordsOf(order);
        ImmutableArray<Yardage> yardages = LaidOut(order, cancellation);
        return new LayoutsAnswer
        {
            Reference = order.Order.Reference,
            Units = order.Order.Units!.Value,
            Engine = EngineVersion.Current,
            Layouts = words.Layouts(yardages),
            Pieces = words.Pieces(order.Drafting),
            Warnings = words.WarningsWith(yardages),
        };
    }

    private static YardageAnswer EstimateYardage(CheckedOrder order, CancellationToken cancellation)
    {
        AnswerWording words = WordsOf(order);
        ImmutableArray<Yardage> yardages = LaidOut(order, cancellation);
        return new YardageAnswer
        {
            Reference = order.Order.Reference,
            Units = order.Order.Units!.Value,
            Engine = EngineVersion.Current,
            Yardage = words.Yardage(yardages),
            Warnings = words.WarningsWith(yardages),
        };
    }

    // The order of a query has one fabric. The warnings name parameters, since the desk has placed them.
    private static EstimateAnswer EstimateOneFabric(CheckedOrder order, CancellationToken cancellation)
    {
        AnswerWording words = WordsOf(order);
        ImmutableArray<Yardage> yardages = LaidOut(order, cancellation);
        YardageLine line = words.Yardage(yardages).Single();
        return new EstimateAnswer
        {
            Units = order.Order.Units!.Value,
            Engine = EngineVersion.Current,
            SoldLength = line.SoldLength,
            SoldUnit = line.SoldUnit,
            LayoutLength = line.LayoutLength,
            ProvenMinimal = line.ProvenMinimal,
            Because = line.Because,
            Warnings = words.WarningsWith(yardages, order.Placed),
        };
    }

    /// <summary>A quote as the engine has it, and as it is answered.</summary>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    /// <param name="order">A sound order.</param>
    /// <param name="cancellation">Cancels the search.</param>
    /// <param name="onPaper">Whether it will be printed.</param>
    internal static (Quote Quote, QuoteAnswer Answer) Quoted(CheckedOrder order, CancellationToken cancellation, bool onPaper = false)
    {
        Quote quote = QuotePipeline.Of(order.Drafting, cancellation);
        OrderMetrics.Count(quote.Yardages);
        // The wording adds a warning of its own when the total leaves out what has no price.
        return (quote, WordsOf(order, onPaper).Quote(order.Order, quote));
    }

    private static QuoteAnswer QuoteAll(CheckedOrder order, CancellationToken cancellation) => Quoted(order, cancellation).Answer;

    // One fit at the effort of the order. The largest cushions are found by searches of their own.
    private static FitAnswer FitOnHand(CheckedOrder order, CancellationToken cancellation)
    {
        Engine.Specifications.OrderSpecification specified = order.Drafting.Order;
        Fit found = Desk.Fit.Of(specified, order.Intake.Warnings, specified.Effort, 1, cancellation);
        found = FitAsBought.Of(found, order, cancellation) ?? found;
        var steps = new FitSteps(found, specified.Effort);
        var changes = new FitChanges(steps, cancellation);
        Fit fit = changes.OrAllBought(found.Filled(steps.Changes, cancellation), order.Drafting);
        IReadOnlyList<SecondLot> secondLots = changes.SecondLots(fit);
        fit = changes.OrWholeCushions(fit, secondLots);
        return FitWording.Of(
            order,
            fit,
            changes.Missing(fit),
            secondLots,
            changes.Of(specified, fit),
            LargestCushions.Of(order.Order, specified, fit, steps, cancellation)
        );
    }

    private static AnswerWording WordsOf(CheckedOrder order, bool onPaper = false) =>
        new(order.Language, order.Drafting.Order.Unit, order.Warnings, onPaper);

    // One yardage for each fabric, counted in the metrics.
    private static ImmutableArray<Yardage> LaidOut(CheckedOrder order, CancellationToken cancellation)
    {
        ImmutableArray<Yardage> yardages = QuotePipeline.LayOut(order.Drafting, cancellation);
        OrderMetrics.Count(yardages);
        return yardages;
    }
}
