using System.Collections.Immutable;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Documents.Drawings;
using CushionService.Engine.Cutting;
using CushionService.Engine.Instructions;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications.Pricing;
using CushionService.Wording;

namespace CushionService.Documents.CutSheets;

/// <summary>A quote with what the parts of its documents share.</summary>
/// <param name="quote">The quote.</param>
/// <param name="language">The reader's language.</param>
internal sealed class Job(QuoteAnswer quote, Language language = Language.English)
{
    private const string OfCushion = "step.of-cushion";

    /// <summary>The quote.</summary>
    public QuoteAnswer Quote { get; } = quote;

    /// <summary>Prints the quote's lengths, and messages.</summary>
    public OrderUnits Units { get; } = new(quote.Units, language);

    /// <summary>The numbers that lists and drawings share.</summary>
    public NumberedPieces Pieces { get; } = new(quote.Pieces);

    /// <summary>The steps.</summary>
    public IReadOnlyList<JobStep> Steps { get; private init; } =
    [.. quote.Steps.Select(step => new JobStep(step.Number, null, step.Key, step.Text, step.Pieces))];

    /// <summary>The fabrics as they were ordered; none when not known.</summary>
    public IReadOnlyList<Fabric> Fabrics { get; private init; } = [];

    /// <summary>Pictures of the cushions and the steps.</summary>
    public JobPictures Pictures { get; private init; } = JobPictures.None;

    /// <summary>A quote with all that its documents show.</summary>
    /// <param name="answer">The quote as it is answered.</param>
    /// <param name="quote">The same as the engine has it.</param>
    /// <param name="order">The order as it was sent.</param>
    /// <param name="language">The reader's language.</param>
    /// <param name="pictures">Pictures of the cushions and the steps.</param>
    public static Job Of(QuoteAnswer answer, Quote quote, Order order, Language language, JobPictures pictures)
    {
        var units = new OrderUnits(answer.Units, language);
        QuoteAnswer named = answer with
        {
            Pieces = PieceNames.OnPaper(answer.Pieces, quote.Drafting, language),
            Seams = PieceNames.OnPaper(answer.Seams, quote.Drafting, language),
        };
        return new Job(named, language)
        {
            Steps = [.. quote.Steps.Select((step, i) => Of(step, i + 1, units))],
            Fabrics = order.Fabrics ?? [],
            Pictures = pictures,
            Parts = quote
                .Drafting.Pieces.Where(piece => piece.Panel is not null)
                .DistinctBy(piece => piece.Id)
                .ToDictionary(piece => piece.Id, piece => piece.Part),
            Allowances = quote.Drafting.Order.Cushions.ToDictionary(one => one.Id, one => units.From(one.SeamAllowance)),
            Goods = quote.Drafting.Order.PriceBook?.Goods ?? ImmutableDictionary<string, GoodSpecification>.Empty,
        };
    }

    /// <summary>A message in words.</summary>
    public string Say(Message message) => Units.Say(message);

    /// <summary>The day the work is due, as the reader's language writes days; null for none.</summary>
    public string? Due => Quote.Due?.Split('-') is [var year, var month, var day] ? Say(SheetTexts.Day(year, month, day)) : Quote.Due;

    /// <summary>What people call a fabric: its label, or else its id.</summary>
    public string FabricName(string id) => Quote.Layouts.FirstOrDefault(layout => layout.Fabric == id)?.Label ?? id;

    /// <summary>What people call a cushion: its label, or else its id.</summary>
    public string CushionName(string id) => Quote.Cushions.FirstOrDefault(cushion => cushion.Id == id)?.Label ?? id;

    /// <summary>The parts that pieces are, by the pieces' ids; none when not known.</summary>
    public IReadOnlyDictionary<string, PartName> Parts { get; private init; } = ImmutableDictionary<string, PartName>.Empty;

    /// <summary>What a piece of a cushion is called beside others of the same cushion.</summary>
    public string PartOf(PieceAnswer piece) => Parts.TryGetValue(piece.Id, out PartName part) ? Say(part.ToMessage()) : piece.Part;

    /// <summary>What a piece is called among those of several cushions; where the steps use the answer's own names, as the answer has
    /// it.</summary>
    public string NameOf(PieceAnswer piece) =>
        Quote.Cushions.FirstOrDefault(cushion => cushion.Id == piece.Cushion) is { } cushion && PartOf(piece) != piece.Part
            ? Say(new PieceName(piece.Id, cushion.Label ?? cushion.Id, Parts[piece.Id]).ToMessage())
            : piece.Label ?? piece.Id;

    /// <summary>The seam allowance of each cushion, in the order's units, by its id; none when not known.</summary>
    public IReadOnlyDictionary<string, double> Allowances { get; private init; } = ImmutableDictionary<string, double>.Empty;

    /// <summary>What the shop's price book says of items, by item.</summary>
    public IReadOnlyDictionary<string, GoodSpecification> Goods { get; private init; } =
        ImmutableDictionary<string, GoodSpecification>.Empty;

    /// <summary>What people call a material: its label, the shop's, or else what prices name it; a name that is the service's own is in the
    /// reader's words.</summary>
    public string NameOf(MaterialAnswer material) =>
        material.Label
        ?? Good(material)?.Label
        ?? Say(
            material.Item.Replace('-', ' ') == KindText.Of(material.Kind)
                ? SheetTexts.Material(material.Kind)
                : AnswerTexts.Item(material.Item)
        );

    /// <summary>What people call an item of a price; the item itself where no material is of it.</summary>
    public string NameOf(string item) =>
        Quote.Materials.FirstOrDefault(material => material.Item == item) is { } material ? NameOf(material) : item;

    /// <summary>Where the shop sells a material; null where the price book does not say.</summary>
    public string? LinkOf(MaterialAnswer material) => Good(material)?.Link;

    /// <summary>The numbers of pieces.</summary>
    public string[] Numbers(IEnumerable<string> pieces) => [.. pieces.Select(id => Pieces[id].Number)];

    // Fabrics may have another name in the price book.
    private GoodSpecification? Good(MaterialAnswer material)
    {
        string item = Fabrics.FirstOrDefault(fabric => fabric.Id == material.Item)?.Item ?? material.Item;
        return Goods.GetValueOrDefault(item);
    }

    private static JobStep Of(Step step, int number, OrderUnits units)
    {
        Message said = step.Text.Key == OfCushion ? (Message)step.Text.Arguments[1].Value! : step.Text;
        return new JobStep(number, step.Cushion, said.Key, units.Say(said), step.Pieces);
    }
}
