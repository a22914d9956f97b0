using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;

namespace CushionService.Specifying;

/// <summary>Reads an order's lengths in its units, and knows what applies where it says nothing. The validators and the specification read
/// through it alike, so that neither can take another default.</summary>
internal sealed class OrderReading
{
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
            ThreadRatio = (decimal?)workroom?.ThreadRatio ?? usual.ThreadRatio,
            ThreadWaste = (decimal?)workroom?.ThreadWaste ?? usual.ThreadWaste,
        };
    }

    public Order Order { get; }

    /// <summary>The price book that the order names; null for none.</summary>
    public PriceBookSpecification? Book { get; }

    /// <summary>The currency of every price; null when nothing is priced.</summary>
    public Currency? Currency => Order.Currency is { } code ? new Currency(code) : Book?.Currency;

    /// <summary>The unit of numbers, and of the answer.</summary>
    public LengthUnit Unit { get; }

    public WorkroomPractice Practice { get; }

    /// <summary>The only cloth, which parts without an entry are made of; null when there are several.</summary>
    public string? OnlyFabric => Order.Fabrics is [{ Id: { } id }] ? id : null;

    /// <summary>The length; null when there is none, or it cannot be read.</summary>
    public Length? Length(Measure? measure) => Length(measure, Unit);

    /// <summary>The length, a number being in a unit of its own.</summary>
    public static Length? Length(Measure? measure, LengthUnit unit) =>
        measure is { } written && written.TryRead(unit, out Length length) ? length : null;

    public string Text(Length length) => LengthText.Format(length, Unit);

    public double Number(Length length) => (double)length.In(Unit);
}
