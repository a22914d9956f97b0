using System.Collections.Immutable;
using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Engine.Layouts;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Intake;
using CushionService.Metrics;
using CushionService.PriceBooks;
using CushionService.Wording;

namespace CushionService.Desk;

/// <summary>The one room behind both doors: checks an order by the validators, sends it through the engine, and words the answer
/// in the contract's records. REST and gRPC only carry orders in and answers out.</summary>
public sealed class OrderDesk(IPriceBooks books)
{
    /// <summary>A desk without price books.</summary>
    public OrderDesk()
        : this(PriceBookShelf.Empty) { }

    /// <summary>Checks an order, down to whether every piece fits its fabric.</summary>
    public Outcome<ValidationAnswer> Validate(Order order, CancellationToken cancellation) => Validate(order, Purpose.Making, cancellation);

    /// <summary>Checks an order that is sent for a purpose.</summary>
    public Outcome<ValidationAnswer> Validate(Order order, Purpose purpose, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        Checked check = Check(order, purpose);
        return new ValidationAnswer
        {
            Valid = check.Violations.IsEmpty,
            Violations = check.Violations,
            Warnings = check.Warnings,
        };
    }

    /// <summary>What to cut, mark and sew together.</summary>
    public Outcome<PiecesAnswer> ListPieces(Order order, CancellationToken cancellation) =>
        Answer(
            order,
            (drafting, words) =>
            {
                cancellation.ThrowIfCancellationRequested();
                return new PiecesAnswer
                {
                    Reference = order.Reference,
                    Units = order.Units!.Value,
                    Engine = EngineVersion.Current,
                    Pieces = words.Pieces(drafting),
                    Seams = words.Seams(drafting),
                    Warnings = words.Warnings,
                };
            }
        );

    /// <summary>A layout for each fabric.</summary>
    public Outcome<LayoutsAnswer> LayOut(Order order, CancellationToken cancellation) =>
        Answer(
            order,
            (drafting, words) =>
            {
                ImmutableArray<Yardage> yardages = LayOut(drafting, cancellation);
                return new LayoutsAnswer
                {
                    Reference = order.Reference,
                    Units = order.Units!.Value,
                    Engine = EngineVersion.Current,
                    Layouts = words.Layouts(yardages),
                    Pieces = words.Pieces(drafting),
                    Warnings = words.Warnings,
                };
            }
        );

    /// <summary>How much of each fabric to buy.</summary>
    public Outcome<YardageAnswer> EstimateYardage(Order order, CancellationToken cancellation) =>
        Answer(
            order,
            (drafting, words) =>
                new YardageAnswer
                {
                    Reference = order.Reference,
                    Units = order.Units!.Value,
                    Engine = EngineVersion.Current,
                    Yardage = words.Yardage(LayOut(drafting, cancellation)),
                    Warnings = words.Warnings,
                }
        );

    /// <summary>Everything.</summary>
    public Outcome<QuoteAnswer> Quote(Order order, CancellationToken cancellation) =>
        Answer(
            order,
            (drafting, words) =>
            {
                Quote quote = QuotePipeline.Of(drafting, cancellation);
                OrderMetrics.Count(quote.Yardages);
                return words.Quote(order, quote);
            }
        );

    /// <summary>The order with other fabrics in the place of its own, cheapest first.</summary>
    public Outcome<ComparisonAnswer> Compare(Order order, CancellationToken cancellation)
    {
        Checked check = Check(order, Purpose.Comparing);
        return check.Drafting is null ? new Refusal(check.Violations) : Comparison.Of(order, check.Taken, cancellation);
    }

    /// <summary>Whether the order can be cut from the fabric on hand.</summary>
    public Outcome<FitAnswer> Fit(Order order, CancellationToken cancellation)
    {
        Checked check = Check(order, Purpose.Fitting);
        return check.Drafting is not { } drafting
            ? new Refusal(check.Violations)
            : FitWording.Of(
                order,
                Desk.Fit.Of(drafting.Order, check.Taken.Warnings, drafting.Order.Effort, 1, cancellation),
                LargestCushions.Of(order, drafting.Order, cancellation)
            );
    }

    /// <summary>What can be ordered.</summary>
    public CatalogueAnswer GetCatalogue() => CatalogueWording.Catalogue;

    private Outcome<T> Answer<T>(Order order, Func<Drafting, AnswerWording, T> answer)
        where T : class
    {
        Checked check = Check(order);
        return check.Drafting is { } drafting && check.Violations.IsEmpty
            ? answer(drafting, new AnswerWording(drafting.Order.Unit, check.Warnings))
            : new Refusal(check.Violations);
    }

    private static ImmutableArray<Yardage> LayOut(Drafting drafting, CancellationToken cancellation)
    {
        ImmutableArray<Yardage> yardages = QuotePipeline.LayOut(drafting, cancellation);
        OrderMetrics.Count(yardages);
        return yardages;
    }

    // What the validators pass is drafted, and only then can be measured against the fabric.
    // A price book is looked up once, so that all of an answer is priced by one version of it.
    private Checked Check(Order order, Purpose purpose = Purpose.Making)
    {
        IntakeResult taken = OrderIntake.Read(order, order.PriceBook is { } name ? books.Find(name) : null, purpose);
        if (taken.Specification is not { } specification)
        {
            return new Checked(taken, null, taken.Violations, taken.Warnings);
        }

        Drafting drafting = Drafting.Of(specification);
        bool asItStands = purpose == Purpose.Making;
        return new Checked(taken, drafting, asItStands ? drafting.Violations : [], taken.Warnings.AddRange(drafting.Warnings));
    }

    private sealed record Checked(
        IntakeResult Taken,
        Drafting? Drafting,
        ImmutableArray<Violation> Violations,
        ImmutableArray<Violation> Warnings
    );
}
