using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Intake;

/// <summary>How a fabric is sold and priced: by the order, or else by the price book, and in one unit.</summary>
/// <remarks>The order's own sale and price come before those of the price book. Steps and minimums are in the sale's unit, and so are the
/// ranges that are reported.</remarks>
internal static class FabricPricing
{
    private static readonly LengthField<Sale> Step = RecordForm<Sale>.Length(nameof(Sale.Step)),
        Minimum = RecordForm<Sale>.Length(nameof(Sale.Minimum));

    /// <summary>The rule of sale and the price; null where there is none, or it was refused.</summary>
    /// <param name="fabric">The fabric as written.</param>
    /// <param name="order">The order, with its price book and its currency.</param>
    /// <param name="findings">Takes what is wrong with the fabric.</param>
    public static (SaleRule? Sold, ItemPriceSpecification? Price) Of(Fabric fabric, OrderContext order, Findings findings)
    {
        // In a price book a fabric is under its item, or else under its id.
        bool owned = fabric.CustomerOwned == true;
        ItemPriceSpecification? booked = owned ? null : order.Book?.Prices.GetValueOrDefault(fabric.Item ?? fabric.Id ?? "");
        // A price of the order's own is taken whole: none of its steps or breaks come from the book.
        ItemPriceSpecification? price = fabric.Price is { } written
            ? PriceIntake.OfFabric(written, order.Currency, findings.Within(nameof(fabric.Price)))
            : booked;
        bool byWeight = (fabric.Sold?.Unit ?? booked?.Per) is SaleUnit.Kg or SaleUnit.Lb;
        SaleRule? sold =
            byWeight ? WeightSale.Of(fabric, booked, findings)
            : fabric.Sold is { } sale ? Sold(sale, findings.Within(nameof(fabric.Sold)))
            : InBook(booked);
        if (owned)
        {
            return (OwnedSale(fabric, sold, order), OwnedPrice(fabric, findings));
        }

        // An unknown price book may have what is missing: only its name is reported.
        if (fabric.Sold is null && sold is null && !byWeight && (order.Order.PriceBook is null || order.Book is not null))
        {
            findings.Refuse(
                nameof(fabric.Sold),
                "required",
                order.Book is { } book ? FabricTexts.SoldRequiredByBook(book.Name) : FabricTexts.SoldRequired
            );
        }

        UnitsAgree(fabric, fabric.Sold is { } own ? own.Unit : booked?.Per ?? sold?.Unit, booked, order, findings);
        return (sold, price);
    }

    // What a customer is asked for is rounded as the trade sells it, in the order's system, unless the order says otherwise. Null where the
    // sale was refused.
    private static SaleRule? OwnedSale(Fabric fabric, SaleRule? sold, OrderContext order)
    {
        SaleUnit unit = order.Unit is LengthUnit.Inch ? SaleUnit.Yd : SaleUnit.M;
        return fabric.Sold is null ? new SaleRule(unit, FabricTrade.StepOf(unit), FabricTrade.StepOf(unit)) : sold;
    }

    private static ItemPriceSpecification? OwnedPrice(Fabric fabric, Findings findings)
    {
        if (fabric.Price is not null)
        {
            findings.NotApplicable(nameof(fabric.Price), FabricTexts.OwnedPrice);
        }

        return null;
    }

    // A price per metre cannot be put on yards without a rounding that nobody has agreed to.
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
        // A missing unit has been reported by the form; yards then only serve to read the numbers.
        SaleUnit unit = sale.Unit ?? SaleUnit.Yd;
        Findings inUnit = findings.In(FabricTrade.LengthOf(unit));
        Fields<Sale> fields = RecordForm<Sale>.Read(sale, inUnit);
        // Area says nothing of how long a piece the shop cuts.
        if (unit is not (SaleUnit.Yd or SaleUnit.M))
        {
            findings.Refuse(nameof(sale.Unit), "not-combinable", FabricTexts.SoldByLength);
        }

        return fields.IsSound && fields[Step] is { } step ? new SaleRule(unit, step, fields[Minimum] ?? step) : null;
    }

    // The sale that a price book states with its price; the trade's step where it states none.
    private static SaleRule? InBook(ItemPriceSpecification? booked)
    {
        if (booked is not { Per: SaleUnit.Yd or SaleUnit.M })
        {
            return null;
        }

        LengthUnit unit = FabricTrade.LengthOf(booked.Per);
        Length step = booked.Step is { } own ? In(own) : FabricTrade.StepOf(booked.Per);
        return new SaleRule(booked.Per, step, booked.Minimum is { } minimum ? In(minimum) : step);

        // To the nearest nanometre, from which the rule has the fraction back.
        Length In(Fraction units) =>
            Length.FromNanometres(((2 * units) + Fraction.Of(1, Length.NanometresIn(unit))).FloorOf(Length.NanometresIn(unit)) / 2);
    }
}
