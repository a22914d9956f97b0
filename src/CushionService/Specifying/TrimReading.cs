using System.Collections.Immutable;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;

namespace CushionService.Specifying;

/// <summary>Reads what is added to a cushion as the engine's, defaults taken.</summary>
internal static class TrimReading
{
    /// <summary>The additions of a cushion that keeps every rule.</summary>
    public static TrimSpecification Of(Cushion cushion, CushionReading reading, OrderReading order) => new()
    {
        Edging = cushion.Edging is { } edging ? Edging(edging, reading, order) : null,
    };

    /// <summary>The cloths of what is added.</summary>
    public static FabricRoles Fabrics(Cushion cushion, FabricRoles roles) => roles with
    {
        Edging = cushion.Edging?.Fabric ?? roles.Top,
    };

    /// <summary>The seams in which an edging stands.</summary>
    public static ImmutableArray<EdgingPlace> Places(Edging edging, CushionReading reading) => edging switch
    {
        { At: { } at } => [.. at],
        { Kind: EdgingKind.Ruffle } => [.. (reading.Offer?.Edgings ?? []).Take(1)],
        _ => reading.Offer?.Edgings ?? [],
    };

    /// <summary>Diameter of a welt's cord; null when it cannot be read.</summary>
    public static Length? Cord(Edging edging, OrderReading order) => edging.CordDiameter is null
        ? order.Unit == LengthUnit.Inch ? Length.FromInches(0.15625m) : Length.FromMillimetres(4)
        : order.Length(edging.CordDiameter);

    private static EdgingSpecification? Edging(Edging edging, CushionReading reading, OrderReading order) => edging.Kind switch
    {
        EdgingKind.Welt => new WeltSpecification(Places(edging, reading), Cord(edging, order)!.Value, edging.Cut ?? WeltCut.Bias),
        EdgingKind.Ruffle => new RuffleSpecification(
            Places(edging, reading), Fraction.Of(decimal.Round((decimal)(edging.Fullness ?? 2), 6)), order.Length(edging.Depth)!.Value, edging.Lining ?? RuffleLining.Folded),
        _ => null,
    };
}
