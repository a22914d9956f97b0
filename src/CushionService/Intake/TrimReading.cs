using System.Collections.Immutable;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Intake;

/// <summary>Reads what is added to a cushion as the engine's, defaults taken. A length is null when it cannot be read.</summary>
internal static class TrimReading
{
    private static readonly ImmutableArray<Side> VentSides = [Side.Back, Side.Left, Side.Right, Side.Front];

    /// <summary>The additions of a cushion that keeps every rule.</summary>
    public static TrimSpecification Of(Cushion cushion, CushionReading reading, OrderReading order) =>
        new()
        {
            Edging = cushion.Edging is { } edging ? Edging(edging, reading, order) : null,
            Ties = cushion.Ties is { } ties
                ? new TieSpecification(
                    ties.Pairs ?? 2,
                    ties.Side ?? Side.Back,
                    TieLength(ties, order)!.Value,
                    TieWidth(ties, order)!.Value,
                    ties.Make ?? StrapMake.Folded
                )
                : null,
            Straps = cushion.Straps is { } straps
                ? new StrapSpecification(
                    straps.Count ?? 2,
                    Or(straps.Width, Length.FromInches(1), order)!.Value,
                    Or(straps.Length, reading.Outline!.Width, order)!.Value,
                    straps.Make ?? StrapMake.Folded
                )
                : null,
            Tufts = cushion.Tufts is { } tufts ? Tufts(tufts, order) : null,
            Pocket = cushion.Pocket is { } pocket
                ? new PocketSpecification(pocket.Side ?? Side.Right, order.Length(pocket.Width)!.Value, order.Length(pocket.Height)!.Value)
                : null,
            Base = cushion.Base ?? BaseKind.Plain,
            Vents = cushion.Vents ?? 0,
            VentSide = VentSide(cushion, reading) ?? Side.Back,
            FaceJoins = cushion.FaceJoins ?? FaceJoins.Refuse,
        };

    /// <summary>The fabrics of what is added.</summary>
    public static FabricRoles Fabrics(Cushion cushion, FabricRoles roles) =>
        roles with
        {
            Edging = cushion.Edging?.Fabric ?? roles.Top,
            Ties = cushion.Ties?.Fabric ?? roles.Top,
            Straps = cushion.Straps?.Fabric ?? roles.Bottom,
            Pocket = cushion.Pocket?.Fabric ?? roles.Sides,
        };

    /// <summary>The seams in which an edging stands: those that it names, or the usual ones; a wedge that ends in an edge has one there, not two.</summary>
    public static ImmutableArray<EdgingPlace> Places(Edging edging, CushionReading reading)
    {
        if (edging.At is { } at)
        {
            return [.. at];
        }

        ImmutableArray<EdgingPlace> usual = edging.Kind is { } kind && reading.Offer?.EdgingOf(kind) is { } offer ? offer.Usual : [];
        return reading.IsSharp ? [.. usual.Take(1)] : usual;
    }

    public static Length? Cord(Edging edging, OrderReading order) =>
        Or(edging.CordDiameter, order.Unit == LengthUnit.Inch ? Length.FromInches(0.15625m) : Length.FromMillimetres(4), order);

    public static Length? TieLength(Ties ties, OrderReading order) => Or(ties.Length, Length.FromInches(12), order);

    public static Length? TieWidth(Ties ties, OrderReading order) => Or(ties.Width, Length.FromInches(0.5m), order);

    /// <summary>The tufts; null when a size cannot be read.</summary>
    public static TuftSpecification? Tufts(Tufts tufts, OrderReading order) =>
        Or(tufts.ButtonDiameter, Length.FromInches(0.875m), order) is { } button && Or(tufts.PullDepth, Length.Zero, order) is { } pull
            ? new TuftSpecification(
                tufts.Rows!.Value,
                tufts.Columns!.Value,
                tufts.Grid ?? TuftGrid.Square,
                button,
                tufts.Covered ?? false,
                pull
            )
            : null;

    /// <summary>A side of the boxing that nothing else takes; null when there is none.</summary>
    public static Side? VentSide(Cushion cushion, CushionReading reading)
    {
        foreach (Side side in VentSides)
        {
            bool free =
                !(reading.OpensBoxing && side == reading.Side)
                && !(cushion.Handle is not null && side == reading.HandleSide)
                && !(cushion.Pocket is not null && side == (cushion.Pocket.Side ?? Side.Right));
            if (free && reading.Outline?.Sides.Any(stretch => stretch.Side == side) == true)
            {
                return side;
            }
        }

        return null;
    }

    private static EdgingSpecification? Edging(Edging edging, CushionReading reading, OrderReading order) =>
        edging.Kind switch
        {
            EdgingKind.Welt => new WeltSpecification(Places(edging, reading), Cord(edging, order)!.Value, edging.Cut ?? WeltCut.Bias),
            EdgingKind.Ruffle => new RuffleSpecification(
                Places(edging, reading),
                Fraction.Of(decimal.Round(OrderReading.Decimal(edging.Fullness) ?? 2m, 6)),
                order.Length(edging.Depth)!.Value,
                edging.Lining ?? RuffleLining.Folded
            ),
            EdgingKind.Flange => new FlangeStripSpecification(Places(edging, reading), order.Length(edging.Depth)!.Value),
            _ => null,
        };

    private static Length? Or(Contract.Measure? measure, Length usual, OrderReading order) =>
        measure is null ? usual : order.Length(measure);
}
