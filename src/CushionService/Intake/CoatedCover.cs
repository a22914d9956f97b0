using CushionService.Contract.Orders;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Intake;

/// <summary>What is unwise in a cushion all of coated fabric: it neither gives nor lets air through.</summary>
internal static class CoatedCover
{
    /// <summary>Reports what is unwise.</summary>
    public static void Check(Cushion cushion, FillSpecification? fill, ConstructionOffer offer, OrderContext order, Findings findings)
    {
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
    public static bool IsCoated(Cushion cushion, OrderContext order)
    {
        string? top = cushion.Fabrics?.Top ?? order.OnlyFabric;
        string?[] parts = [top, cushion.Fabrics?.Bottom ?? top, cushion.Fabrics?.Sides ?? top];
        return parts.All(id => order.Fabric(id) is { Coated: true });
    }
}
