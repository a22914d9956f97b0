using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Pricing;

namespace CushionService.Intake;

/// <summary>Reads an order's lengths in its units, and knows what applies where it says nothing. The validators and the specification read
/// through it alike, so that neither can take another default.</summary>
internal sealed class OrderReading
{
    // 8 stitches an inch, 3 mm (common practice, no source).
    private static readonly Length UsualStitch = Engine.Measures.Length.FromInches(0.125m);
    private static readonly Length UsualMetricStitch = Engine.Measures.Length.FromMillimetres(3);
    private static readonly Length UsualBight = Engine.Measures.Length.FromInches(0.25m);
    private static readonly Length UsualMetricBight = Engine.Measures.Length.FromMillimetres(6);

    public OrderReading(Order order, PriceBookSpecification? book = null)
    {
        (Order, Book) = (order, book);
        Unit = order.Units switch
        {
            Units.Cm => LengthUnit.Centimetre,
            Units.Mm => LengthUnit.Millimetre,
            _ => LengthUnit.Inch,
        };
        WorkroomPractice usual = Unit == LengthUnit.Inch ? WorkroomPractice.Imperial : WorkroomPractice.Metric;
        Workroom? workroom = order.Workroom;
        Practice = usual with
        {
            SeamAllowance = Length(workroom?.SeamAllowance) ?? usual.SeamAllowance,
            CuttingStep = Length(workroom?.CuttingStep) is { Nanometres: > 0 } step ? step : usual.CuttingStep,
            ZipperTurnUnder = Length(workroom?.ZipperTurnUnder) ?? usual.ZipperTurnUnder,
            ZipperReturn = Length(workroom?.ZipperReturn) ?? usual.ZipperReturn,
            HemFold = Length(workroom?.HemFold) ?? usual.HemFold,
            TapeMargin = Length(workroom?.TapeMargin) ?? usual.TapeMargin,
            EdgeDistance = Length(workroom?.EdgeDistance) ?? usual.EdgeDistance,
            BoxingTautness = Length(workroom?.BoxingTautness) ?? usual.BoxingTautness,
            FoamOversize = Length(workroom?.FoamOversize) ?? usual.FoamOversize,
            FaceRounding = workroom?.FaceRounding ?? usual.FaceRounding,
            Squaring = Length(workroom?.Squaring) ?? usual.Squaring,
            Kerf = Length(workroom?.Kerf) ?? usual.Kerf,
            Stitch =
                workroom?.Stitch is { Type: { } type } stitch && Length(stitch.Thickness) is { } thickness
                    ? new StitchSpecification(
                        type,
                        Length(stitch.StitchLength) is { Nanometres: > 0 } each ? each
                            : Unit == LengthUnit.Inch ? UsualStitch
                            : UsualMetricStitch,
                        thickness,
                        !StitchSpecification.HasBight(type)
                            ? Engine.Measures.Length.Zero
                            : Length(stitch.Bight) ?? (Unit == LengthUnit.Inch ? UsualBight : UsualMetricBight)
                    )
                    : null,
            ThreadRatio = Decimal(workroom?.ThreadRatio),
            ThreadWaste = Decimal(workroom?.ThreadWaste) ?? usual.ThreadWaste,
        };
    }

    // The rules read a cushion first, and then the specification: its outline is drawn once.
    private Dictionary<Cushion, CushionReading>? _cushions;

    public Order Order { get; }

    /// <summary>The price book that the order names; null for none.</summary>
    public PriceBookSpecification? Book { get; }

    /// <summary>The currency of every price; null when nothing is priced.</summary>
    public Currency? Currency => Order.Currency is { } code ? new Currency(code) : Book?.Currency;

    /// <summary>The unit of numbers, and of the answer.</summary>
    public LengthUnit Unit { get; }

    public WorkroomPractice Practice { get; }

    /// <summary>The only fabric, which parts without an entry are made of; null when there are several.</summary>
    public string? OnlyFabric => Order.Fabrics is [{ Id: { } id }] ? id : null;

    /// <summary>The stocks that the order may take from: its own, and after them those of its price book.</summary>
    public IEnumerable<(string? Id, MaterialKind? Kind, decimal? Density)> Stocks =>
        [
            .. (Order.Stocks ?? []).Select(stock => (stock?.Id, stock?.Kind, Decimal(stock?.Density))),
            .. Book?.Stocks.Select(stock => ((string?)stock.Id, (MaterialKind?)stock.Kind, stock.Density)) ?? [],
        ];

    /// <summary>The stock of a name; null when there is none.</summary>
    public (string? Id, MaterialKind? Kind, decimal? Density)? Stock(string? name) =>
        name is not null && Stocks.Where(stock => stock.Id == name).ToArray() is [var first, ..] ? first : null;

    /// <summary>A cushion of the order.</summary>
    public CushionReading Cushion(Cushion cushion)
    {
        _cushions ??= new Dictionary<Cushion, CushionReading>(ReferenceEqualityComparer.Instance);
        if (!_cushions.TryGetValue(cushion, out CushionReading? reading))
        {
            _cushions.Add(cushion, reading = new CushionReading(cushion, this));
        }

        return reading;
    }

    /// <summary>The number as a decimal; null when there is none, or it is beyond every range: the rules read an order before they have found it sound.</summary>
    public static decimal? Decimal(double? number) => number is >= -1e15 and <= 1e15 ? (decimal)number : null;

    /// <summary>The length; null when there is none, or it cannot be read.</summary>
    public Length? Length(Measure? measure) => Length(measure, Unit);

    /// <summary>The length, a number being in a unit of its own.</summary>
    public static Length? Length(Measure? measure, LengthUnit unit) =>
        measure is { } written && written.TryRead(unit, out Length length) ? length : null;

    public string Text(Length length) => LengthText.Format(length, Unit);

    public double Number(Length length) => (double)length.In(Unit);
}
