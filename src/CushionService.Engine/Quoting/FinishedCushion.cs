using System.Collections.Immutable;
using CushionService.Engine.Instructions;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Quoting;

/// <summary>What a cushion measures when it is done.</summary>
/// <param name="Cushion">The cushion.</param>
/// <param name="Width">From left to right, on the seam line; of a bolster its length.</param>
/// <param name="Depth">From front to back, on the seam line.</param>
/// <param name="Thickness">Of its sides, at the back of a wedge; null for a cushion without.</param>
/// <param name="Tolerance">How far a finished size may be off, either way.</param>
/// <param name="Grain">Which way its fabric runs.</param>
/// <param name="Loop">Length of the boxing on the seam line; null for a cushion without.</param>
/// <param name="Block">The foam in it; null for another filling, or none.</param>
public sealed record FinishedCushion(
    CushionSpecification Cushion,
    Length Width,
    Length Depth,
    Length? Thickness,
    Length Tolerance,
    Grain Grain,
    Length? Loop,
    FoamBlock? Block
)
{
    /// <summary>The form in it; null for another filling, or none.</summary>
    public PillowForm? Form { get; init; }

    /// <summary>The cushions of a drafting, in the order's order.</summary>
    public static ImmutableArray<FinishedCushion> Of(Drafting drafting)
    {
        ArgumentNullException.ThrowIfNull(drafting);
        return [.. drafting.Order.Cushions.Select((cushion, i) => One(drafting, cushion, i))];
    }

    // A bolster lies on its side: what its outline has across is from front to back.
    private static FinishedCushion One(Drafting drafting, CushionSpecification cushion, int number)
    {
        bool lies = cushion.Construction == Construction.Bolster;
        Length thickness = lies ? cushion.Depth : cushion.Thickness;
        FabricSpecification top = drafting.Order.Fabric(cushion.Fabrics.Top);
        return new FinishedCushion(
            cushion,
            lies ? cushion.Length : cushion.Width,
            lies ? cushion.Width : cushion.Depth,
            thickness > Length.Zero ? thickness : null,
            drafting.Order.Workroom.Sewing.Tolerance,
            cushion.IsRailroaded(top) ? Grain.Railroaded : Grain.UpTheBolt,
            BoxingLoop.Of(cushion, drafting.Patterns[number]),
            cushion.Fill?.Kind == FillKind.Foam ? FoamBlock.Of(cushion, paired: false).First() : null
        )
        {
            Form = cushion.Fill?.Kind == FillKind.Form ? PillowForm.For(cushion, drafting.Order.Stocks) : null,
        };
    }
}
