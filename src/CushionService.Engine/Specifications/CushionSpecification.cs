using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications;

/// <summary>A cushion by its finished sizes, measured on the seam lines.</summary>
public sealed record CushionSpecification
{
    /// <summary>Distinct within the order.</summary>
    public required string Id { get; init; }

    /// <summary>Where it stands in the order, as a JSON Pointer.</summary>
    public string Pointer { get; init; } = "";

    /// <summary>How many are made alike, at least 1.</summary>
    public int Quantity { get; init; } = 1;

    /// <summary>How it is built.</summary>
    public required Construction Construction { get; init; }

    /// <summary>From left to right, above zero.</summary>
    public required Length Width { get; init; }

    /// <summary>From front to back, above zero.</summary>
    public required Length Depth { get; init; }

    /// <summary>Finished thickness; zero for a construction without one.</summary>
    public Length Thickness { get; init; }

    /// <summary>Seam allowance for each edge.</summary>
    public required Length SeamAllowance { get; init; }

    /// <summary>How the boxing is joined.</summary>
    public BoxingJoins Joins { get; init; }

    /// <summary>How the cover opens.</summary>
    public required ClosureSpecification Closure { get; init; }

    /// <summary>A handle; null for none.</summary>
    public HandleSpecification? Handle { get; init; }

    /// <summary>What fills it; null for nothing.</summary>
    public FillSpecification? Fill { get; init; }

    /// <summary>The cloth of each part.</summary>
    public required FabricRoles Fabrics { get; init; }

    /// <summary>The finished length of one of its sides.</summary>
    public Length SideLength(Side side) => side is Side.Left or Side.Right ? Depth : Width;
}
