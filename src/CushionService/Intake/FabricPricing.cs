using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Intake;

/// <summary>How a fabric is sold and priced: by the order, or else by the price book, and in one unit.</summary>
internal static class FabricPricing
{
    private static readonly LengthField<Sale> Step = RecordForm<Sale>.Length(nameof(Sale.Step)),
        Minimum = RecordForm<Sale>.Length(nameof(Sale.Minimum));

    /// <summary>The rule of sale and the price; null where there is none, or it was refused.</summary>
    public static (SaleRule? Sold, ItemPriceSpecification? Price) Of(Fabric fabric, OrderContext order, Findings findings)
    {
        ItemPriceSpecification? booked = order.Book?.Prices.GetValueOrDefault(fabric.Item ?? fabric.Id ?? "");
        ItemPriceSpecification? price = fabric.Price is { } written
            ? PriceIntake.OfFabric(written, order.Currency, findings.Within(nameof(fabric.Price)))
            : booked;
        SaleRule? sold = fabric.Sold is { } sale ? Sold(sale, findings.Within(nameof(fabric.Sold))) : InBook(booked);
        // An unknown price book may have what is missing: only its name is reported.
        if (fabric.Sold is null && sold is null && (order.Order.PriceBook is null || order.Book is not null))
        {
            findings.Refuse(
                nameof(fabric.Sold),
                "required",
                order.Book is { } book ? FabricTexts.SoldRequiredByBook(book.Name) : FabricTexts.SoldRequired
            );
        }

        UnitsAgree(fabric, fabric.Sold is { } own ? own.Unit : sold?.Unit, booked, order, findings);
        return (sold, price);
    }

    private static void UnitsAgree(Fabric fabric, SaleUnit? sold, ItemPriceSpecification? booked, OrderContext order, Findings findings)
    {
        if (sold is { } unit && fabric.Price?.Per is { } per && per != unit)
        {
            findings.Refuse("Price.Per", "not-combinable", FabricTexts.PriceUnit(unit));
        }
        else if (fabric.Price is null && fabric.Sold?.Unit is { } own && booked is not null && booked.Per != own)
        {
            findings.Refuse("Sold.Unit", "not-combinable", FabricTexts.BookUnit(order.Book!.Name, booked.Per));
        }
    }

    // A sale's numbers are in its own unit, yards or metres, and so are the ranges that are reported.
    private static SaleRule? Sold(Sale sale, Findings findings)
    {
        SaleUnit unit = sale.Unit ?? SaleUnit.Yd;
        Findings inUnit = findings.In(FabricTrade.LengthOf(unit));
        Fields<Sale> fields = RecordForm<Sale>.Read(sale, inUnit);
        if (unit is not (SaleUnit.Yd or SaleUnit.M))
        {
            findings.Refuse(nameof(sale.Unit), "not-combinable", FabricTexts.SoldByLength);
        }

        return fields.IsSound && fields[Step] is { } step ? new SaleRule(unit, step, fields[Minimum] ?? step) : null;
    }

    private static SaleRule? InBook(ItemPriceSpecification? booked)
    {
        if (booked is not { Per: SaleUnit.Yd or SaleUnit.M })
        {
            return null;
        }

        LengthUnit unit = FabricTrade.LengthOf(booked.Per);
        Length step = booked.Step is { } own ? Length.From(own, unit) : FabricTrade.StepOf(booked.Per);
        return new SaleRule(booked.Per, step, booked.Minimum is { } minimum ? Length.From(minimum, unit) : step);
    }
}
