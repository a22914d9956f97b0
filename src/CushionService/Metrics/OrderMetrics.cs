using System.Collections.Immutable;
using System.Diagnostics.Metrics;
using CushionService.Contract;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;

namespace CushionService.Metrics;

/// <summary>Counts what becomes of orders: answers, refusals by code, and how good the layouts are. A measure has
/// nothing of an order's content, so that metrics may be kept and shown to anyone who operates the service.</summary>
internal static class OrderMetrics
{
    // Tagged with the outcome: answered or refused. A validation is answered, whatever it finds.
    private static readonly Counter<long> Orders = ServiceMeter.Meter.CreateCounter<long>(
        "cushionservice.orders",
        "{order}",
        "Orders worked on, by whether they were answered."
    );

    // Tagged with the code of the violation, which is one of a few dozen.
    private static readonly Counter<long> Refusals = ServiceMeter.Meter.CreateCounter<long>(
        "cushionservice.refusals",
        "{violation}",
        "Violations told, by code."
    );

    // Tagged with whether the layout is proven minimal.
    private static readonly Counter<long> Layouts = ServiceMeter.Meter.CreateCounter<long>(
        "cushionservice.layouts",
        "{layout}",
        "Layouts made, by whether none could be sold shorter."
    );

    // The effort in the unit in which it is limited, which unlike time is the same on every machine.
    private static readonly Counter<long> Steps = ServiceMeter.Meter.CreateCounter<long>(
        "cushionservice.search.steps",
        "{step}",
        "Steps of search."
    );

    // As bought, after rounding to the steps of sale.
    private static readonly Counter<double> Sold = ServiceMeter.Meter.CreateCounter<double>(
        "cushionservice.fabric.sold",
        "m",
        "Fabric to buy."
    );

    private static readonly Counter<double> Saved = ServiceMeter.Meter.CreateCounter<double>(
        "cushionservice.fabric.saved",
        "m",
        "Fabric that need not be bought, compared with laying the pieces on shelves (next fit, decreasing height)."
    );

    private static readonly KeyValuePair<string, object?> Answered = new("outcome", "answered"),
        Refused = new("outcome", "refused");
    private static readonly KeyValuePair<string, object?> Proven = new("proven", true),
        Open = new("proven", false);

    /// <summary>Counts an order and what became of it.</summary>
    /// <param name="refusal">Why it has no answer; null for an order that was answered.</param>
    public static void Count(Refusal? refusal)
    {
        Orders.Add(1, refusal is null ? Answered : Refused);
        foreach (Violation violation in refusal?.Violations ?? [])
        {
            Refusals.Add(1, new KeyValuePair<string, object?>("code", violation.Code));
        }
    }

    /// <summary>Counts the layouts of an order, one for each fabric.</summary>
    /// <param name="yardages">Of one order; an order that is refused has none to count.</param>
    public static void Count(ImmutableArray<Yardage> yardages)
    {
        // What was saved takes a layout by another method to find out: not for nothing.
        if (!Layouts.Enabled)
        {
            return;
        }

        foreach (Yardage yardage in yardages)
        {
            Layouts.Add(1, yardage.Layout.ProvenMinimal ? Proven : Open);
            Steps.Add(yardage.Layout.Steps);
            Sold.Add(Metres(yardage.Sold));
            Saved.Add(Metres(ShelfLength.Saved(yardage)));
        }
    }

    // Metres are the unit of the instruments, whatever the orders are in.
    private static double Metres(Length length) => length.Nanometres / (double)Length.NanometresIn(LengthUnit.Metre);
}
