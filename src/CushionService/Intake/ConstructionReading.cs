using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Intake;

/// <summary>The fields that belong to some constructions alone, defaults taken; null where one is missing or cannot be read.</summary>
internal sealed class ConstructionReading(Cushion cushion, OrderReading order)
{
    private static readonly Length UsualTail = Length.FromInches(6);
    private static readonly Length UsualTurning = Length.FromInches(0.75m);
    private static readonly Length UsualFlangeTurning = Length.FromInches(0.5m);

    public BolsterEnds? Ends =>
        cushion.Construction != Construction.Bolster
            ? null
            : new BolsterEnds(
                EndKind,
                EndKind == BolsterEndKind.Tied ? Or(cushion.Ends?.Tail, UsualTail) : Length.Zero,
                EndKind == BolsterEndKind.Flat ? Length.Zero : Or(cushion.Ends?.Turning, UsualTurning)
            );

    public BolsterEndKind EndKind => cushion.Ends?.Kind ?? BolsterEndKind.Flat;

    public FlangeLayers FlangeLayers => cushion.Flange?.Layers ?? FlangeLayers.Single;

    public FlangeSpecification? Flange =>
        order.Length(cushion.Flange?.Width) is { } width
            ? new FlangeSpecification(
                FlangeLayers,
                width,
                FlangeLayers == FlangeLayers.Double ? Or(cushion.Flange?.Turning, UsualFlangeTurning) : Length.Zero
            )
            : null;

    public ChannelSpecification? Channels =>
        cushion.Channels is { Count: { } count } channels
            ? new ChannelSpecification(
                count,
                Or(channels.Crown, Length.Zero),
                Fraction.Of(decimal.Round(OrderReading.Decimal(channels.TakeUp) ?? 0.02m, 6))
            )
            : null;

    public FrontShape Front => cushion.Front ?? FrontShape.Square;

    /// <summary>The cushion with these fields.</summary>
    public CushionSpecification Of(CushionSpecification plain) =>
        plain with
        {
            Length = Or(cushion.Length, Length.Zero),
            FrontThickness = Or(cushion.FrontThickness, Length.Zero),
            Front = Front,
            Ends = Ends,
            Flange = Flange,
            Gores = cushion.Gores ?? 0,
            Channels = Channels,
            CornerTaper = Or(cushion.CornerTaper, Length.Zero),
            Fabrics = plain.Fabrics with { InnerCover = cushion.InnerCover?.Fabric },
        };

    private Length Or(Measure? measure, Length usual) => measure is null ? usual : order.Length(measure) ?? usual;
}
