using CushionService.Access;
using CushionService.Admission;
using CushionService.Contract.Answers;
using CushionService.Desk;
using CushionService.Documents.Projects;
using CushionService.Rest.OpenApi;
using CushionService.Streaming;

namespace CushionService.Rest;

/// <summary>Every call under <c>/v1</c>: its path, the scope that it needs, what answers it, and its words in the
/// OpenAPI document. A new call is a row here, and a purpose in <see cref="Purposes"/>.</summary>
internal static class RouteTable
{
    // What a shop's page shows of a quote: not how the workroom cuts it, nor what its hours and its margin are.
    private static readonly PageCallAttribute ShownInPages = new(
        "reference",
        "units",
        "engine",
        "yardage",
        "materials",
        "cautions",
        "warnings",
        "cost.currency",
        "cost.lines",
        "cost.total",
        "cost.tax",
        "cost.unpriced"
    );

    /// <summary>The calls. The words of a row are part of the contract: generated clients take their names from
    /// them.</summary>
    /// <param name="orders">Answers orders.</param>
    /// <param name="stream">Answers streams of orders.</param>
    /// <param name="catalogue">Answers what can be ordered.</param>
    /// <param name="shop">Whose name the project sheet has.</param>
    public static IReadOnlyList<Route> Of(OrderDispatcher orders, QuoteStream stream, CatalogueEndpoint catalogue, ShopDetails shop) =>
        [
            Route.OfOrder(
                "/validations",
                Scopes.Estimate,
                new OrderEndpoint<ValidationAnswer>(orders, Purposes.Validation),
                new OperationText(
                    "validate",
                    "Validations",
                    "Check an order",
                    "Answers 200 for every order that can be read, with all the rules that it breaks and all that is allowed but unwise."
                )
            ),
            Route.OfOrder(
                "/pieces",
                Scopes.Quote,
                new OrderEndpoint<PiecesAnswer>(orders, Purposes.Pieces, Representations.Pieces),
                new OperationText(
                    "listPieces",
                    "Pieces",
                    "List the pieces to cut",
                    "The cut pieces with their derivations, marks and seams; as HTML or PDF the patterns at true size, to print and cut "
                        + "by; as DXF pattern pieces by ASTM D6673; as CSV a table."
                )
            ),
            Route.OfOrder(
                "/layouts",
                Scopes.Quote,
                new OrderEndpoint<LayoutsAnswer>(orders, Purposes.Layout, Representations.Drawing, Representations.Placements),
                new OperationText(
                    "layOut",
                    "Layouts",
                    "Lay the pieces out",
                    "A layout for each fabric that is used, with a length that no layout can beat; as SVG the drawing of one "
                        + "fabric; as CSV the placements."
                )
            ),
            Route.OfOrder(
                "/yardage",
                Scopes.Estimate,
                new OrderEndpoint<YardageAnswer>(orders, Purposes.Yardage),
                new OperationText(
                    "estimateYardage",
                    "Yardage",
                    "Say how much fabric to buy",
                    "The length of each fabric to buy, and nothing else."
                )
            ),
            Route.OfOrder(
                "/quotes",
                Scopes.Quote,
                new OrderEndpoint<QuoteAnswer>(orders, Purposes.Quote, Representations.Quotes(shop)),
                new OperationText(
                    "quote",
                    "Quotes",
                    "Quote an order",
                    "Pieces, seams, layouts, yardage, materials, cost, steps and cautions; as HTML or PDF the ticket to print, all "
                        + "there is, or a project sheet for who sews at home; as CSV the buying list."
                )
            ) with
            {
                OfPages = ShownInPages,
            },
            Route.OfOrder(
                "/labels",
                Scopes.Quote,
                new OrderEndpoint<PiecesAnswer>(orders, null, Representations.Labels),
                new OperationText(
                    "printLabels",
                    "Labels",
                    "Print labels",
                    "A label for each physical piece, with a QR code that carries reference, piece and copy; as HTML or PDF."
                )
            ),
            Route.OfOrder(
                "/pictures",
                Scopes.Estimate,
                new OrderEndpoint<PiecesAnswer>(orders, null, Representations.Picture),
                new OperationText(
                    "drawPicture",
                    "Pictures",
                    "Draw a cushion",
                    "A picture of one finished cushion as SVG, drawn to scale from its pattern: outline, thickness, joins, closure, "
                        + "edging, and the print where the layout puts it; or its pieces apart. Laid out with effort quick unless told."
                )
            ),
            Route.OfOrder(
                "/comparisons",
                Scopes.Quote,
                new OrderEndpoint<ComparisonAnswer>(orders, Purposes.Comparison),
                new OperationText(
                    "compare",
                    "Comparisons",
                    "Compare fabrics for an order",
                    "The order is quoted as given and with each of its `candidates` in place of one fabric: other fabrics, widths "
                        + "or rotations, and, where asked, with every cushion cut from a length of its own. Cheapest first; an option "
                        + "that cannot be made is listed with the reasons."
                )
            ) with
            {
                OfPages = new PageCallAttribute(),
            },
            Route.OfOrder(
                "/fits",
                Scopes.Quote,
                new OrderEndpoint<FitAnswer>(orders, Purposes.Fit),
                new OperationText(
                    "fit",
                    "Fits",
                    "Fit an order onto the fabric on hand",
                    "Whether the pieces fit onto what `onHand` lists, all offcuts of a fabric together; how they lie, what is "
                        + "left, and the largest cushion that would fit. Fabrics without `onHand` are to be bought and are not looked "
                        + "at."
                )
            ) with
            {
                OfPages = new PageCallAttribute(),
            },
            Route.OfOrderLines(
                "/quotes/stream",
                Scopes.Batch,
                new QuoteStreamEndpoint(stream).HandleAsync,
                new OperationText(
                    "quoteMany",
                    "QuoteStreams",
                    "Quote many orders",
                    "One order a line in, one answer a line out, in order, each as soon as it and those before it are ready. A "
                        + "line that cannot be quoted is answered in its place with the problem, which names the line; blank lines are "
                        + "passed over. Any number of orders: the service reads only a few lines ahead of what the caller has taken "
                        + "back, so a caller must read the answers while it sends."
                )
            ),
            .. Route.OfQuery(
                "/estimate",
                Scopes.Estimate,
                new EstimateEndpoint(orders).HandleAsync,
                new OperationText(
                    "estimate",
                    "Estimates",
                    "Estimate the fabric for one cushion",
                    "One cushion of one fabric, from flat parameters. The answer carries a strong entity tag that is the same for "
                        + "every spelling of the same order, and may be kept by any cache; If-None-Match is answered with 304 before "
                        + "anything is laid out. When left out: effort is quick, the closure is a zipper where the construction takes "
                        + "one, and fabric is sold by 1/8 yd, or by 0.1 m in a metric order."
                )
            ),
            .. Route.OfList(
                "/catalogue",
                Scopes.Estimate,
                catalogue.HandleAsync,
                new OperationText(
                    "getCatalogue",
                    "Catalogue",
                    "List what can be ordered",
                    "The constructions with what they combine with, and every field of an order with its range: enough to draw a form from."
                )
            ),
        ];
}
