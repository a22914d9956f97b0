using System.Collections.Immutable;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Fitting;

/// <summary>The ways in which an order can be held against the fabric on hand, where its fabric may run either way.</summary>
public static class GrainTrials
{
    /// <summary>The order as it is when every grain is given; else all that is open up the bolt, then all that is open
    /// railroaded.</summary>
    /// <param name="order">An order, its grains given or open.</param>
    /// <returns>One order or two, in the order in which they are tried; none has a grain that is open.</returns>
    /// <remarks>Mixed ways are not tried: each more would double the searches.</remarks>
    public static ImmutableArray<OrderSpecification> Of(OrderSpecification order) =>
        order.Fabrics.Any(fabric => fabric.Grain == Grain.Either) || order.Cushions.Any(cushion => cushion.Grain == Grain.Either)
            ? [With(order, Grain.UpTheBolt), With(order, Grain.Railroaded)]
            : [order];

    // A grain that the order gives stays as it is.
    private static OrderSpecification With(OrderSpecification order, Grain grain) =>
        order with
        {
            Fabrics = [.. order.Fabrics.Select(fabric => fabric.Grain == Grain.Either ? fabric with { Grain = grain } : fabric)],
            Cushions = [.. order.Cushions.Select(cushion => cushion.Grain == Grain.Either ? cushion with { Grain = grain } : cushion)],
        };
}
