using CushionService.Contract.Orders;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Intake;

/// <summary>What is unwise in a cushion all of coated fabric: it neither gives nor lets air through.</summary>
internal static class CoatedCover
{
    /// <summary>Reports what is unwise.</summary>
    /// <param name="cushion">The cushion as written.</param>
    /// <param name="fill">Its fill; null for none.</param>
    /// <param name="offer">What its construction takes, vents among it.</param>
    /// <param name="order">The order, with its fabrics and its practice.</param>
    /// <param name="findings">Takes what is unwise.</param>
    public static void Check(Cushion cushion, FillSpecification? fill, ConstructionOffer offer, OrderContext order, Findings findings)
    {
        // An empty cover has no air to let out.
        if (fill is null || !IsCoated(cushion, order))
        {
            return;
        }

        if (fill.Kind == FillKind.Foam && fill.Oversize > order.Practice.Fills.LargestCoatedOversize)
        {
            findings.Warn(
                "Fill.Oversize",
                "foam-too-large-for-coated",
                StockTexts.FoamTooLargeForCoated(order.Practice.Fills.LargestCoatedOversize)
            );
        }

        if (cushion.Vents is null or 0 && offer.Additions.Contains(AdditionKind.Vents))
        {
            findings.Warn(nameof(cushion.Vents), "coated-without-vents", StockTexts.CoatedWithoutVents);
        }
    }

    /// <summary>Whether every fabric of the shell is coated.</summary>
    /// <param name="cushion">The cushion as written.</param>
    /// <param name="order">The order, with its fabrics.</param>
    public static bool IsCoated(Cushion cushion, OrderContext order)
    {
        // Top, underside and sides are the shell; edgings and ties do not keep the air in.
        string? top = cushion.Fabrics?.Top ?? order.OnlyFabric;
        string?[] parts = [top, cushion.Fabrics?.Bottom ?? top, cushion.Fabrics?.Sides ?? top];
        return parts.All(id => order.Fabric(id) is { Coated: true });
    }
}
