using System.Collections.Immutable;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Quoting;

/// <summary>An order with one change on every cushion that uses a fabric.</summary>
/// <param name="Change">What is changed.</param>
/// <param name="Order">The order so changed.</param>
public sealed record ChangedOrder(FabricChange Change, OrderSpecification Order)
{
    /// <summary>The changes that alter something, the smallest first.</summary>
    /// <param name="order">An order whose every grain is decided.</param>
    /// <param name="fabric">The fabric that is not enough, or too narrow.</param>
    public static IEnumerable<ChangedOrder> Of(OrderSpecification order, FabricSpecification fabric)
    {
        bool railroaded = order.Cushions.Any(cushion => Uses(cushion, fabric) && cushion.IsRailroaded(fabric));
        foreach (FabricChange change in Enum.GetValues<FabricChange>())
        {
            // What runs one way already is only turned the other way.
            if (change != (railroaded ? FabricChange.Railroaded : FabricChange.UpTheBolt))
            {
                CushionSpecification[] changed =
                [
                    .. order.Cushions.Select(cushion => Uses(cushion, fabric) ? Changed(cushion, fabric, change, order) : cushion),
                ];
                // A change that leaves every cushion as it is would only be laid again in vain.
                if (!changed.SequenceEqual(order.Cushions))
                {
                    yield return new ChangedOrder(change, With(order, fabric, change) with { Cushions = [.. changed] });
                }
            }
        }
    }

    // An edging counts, since welt may be what is too much for the fabric.
    private static bool Uses(CushionSpecification cushion, FabricSpecification fabric) =>
        cushion.Fabrics.Shell.Contains(fabric.Id) || (cushion.Trim.Edging is not null && cushion.Fabrics.Edging == fabric.Id);

    private static CushionSpecification Changed(
        CushionSpecification cushion,
        FabricSpecification fabric,
        FabricChange change,
        OrderSpecification order
    ) =>
        change switch
        {
            FabricChange.StraightWelt
                when cushion.Trim.Edging is SeamStripSpecification { Cut: WeltCut.Bias } welt
                    && cushion.Fabrics.Edging == fabric.Id
                    && cushion.Outline.HasCorners => cushion with
            {
                Trim = cushion.Trim with { Edging = welt with { Cut = WeltCut.Crosswise } },
            },
            FabricChange.Unmatched when fabric.Repeat is not null => cushion with
            {
                Match = new MatchSpecification(FaceMatch.Free, UndersideMatch.Free, BoxingMatch.Free),
            },
            FabricChange.AllowJoins => cushion with { Trim = cushion.Trim with { FaceJoins = FaceJoins.Allow } },
            FabricChange.Railroaded => cushion with { Grain = Grain.Railroaded },
            FabricChange.UpTheBolt => cushion with { Grain = Grain.UpTheBolt },
            FabricChange.PlainUnderside when cushion.Fabrics.Bottom == fabric.Id => cushion with
            {
                Fabrics = cushion.Fabrics with { Bottom = Underside(order, fabric).Id },
            },
            _ => cushion,
        };

    private static OrderSpecification With(OrderSpecification order, FabricSpecification fabric, FabricChange change) =>
        change == FabricChange.PlainUnderside && Underside(order, fabric) is var other && !order.Fabrics.Any(one => one.Id == other.Id)
            ? order with
            {
                Fabrics = order.Fabrics.Add(other),
            }
            : order;

    // Another fabric of the order that is bought; else a plain one as wide, whose price is not known.
    private static FabricSpecification Underside(OrderSpecification order, FabricSpecification fabric) =>
        order.Fabrics.FirstOrDefault(other => other.Id != fabric.Id && other is { Repeat: null, OnHand.IsEmpty: true })
        ?? new FabricSpecification
        {
            Id = "underside",
            Pointer = fabric.Pointer,
            Width = fabric.Width,
            Selvedge = fabric.Selvedge,
            Sold = fabric.Sold,
        };
}
