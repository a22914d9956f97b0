using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Specifications;

/// <summary>A cushion by its finished sizes, measured on the seam lines.</summary>
public sealed record CushionSpecification
{
    /// <summary>Distinct within the order.</summary>
    public required string Id { get; init; }

    /// <summary>A name for people; null where it has none.</summary>
    public string? Label { get; init; }

    /// <summary>What people call it: its label, or else its id.</summary>
    public string Name => Label ?? Id;

    /// <summary>What it belongs to, such as a room; null for nothing.</summary>
    public string? Group { get; init; }

    /// <summary>Its place in the order, as a JSON Pointer.</summary>
    public string Pointer { get; init; } = "";

    /// <summary>How many are made the same, at least 1.</summary>
    public int Quantity { get; init; } = 1;

    /// <summary>How it is built.</summary>
    public required Construction Construction { get; init; }

    /// <summary>The finished outline of its face.</summary>
    public required Outline Outline { get; init; }

    /// <summary>Finished thickness; zero for a construction without one.</summary>
    public Length Thickness { get; init; }

    /// <summary>How much lower than the cushion is thick its boxing is made, so that it is taut; less than the thickness.</summary>
    public Length BoxingTautness { get; init; }

    /// <summary>Finished height of the boxing.</summary>
    public Length BoxingHeight => Thickness - BoxingTautness;

    /// <summary>Finished length of a bolster, end to end; zero for another construction.</summary>
    public Length Length { get; init; }

    /// <summary>Finished thickness of a wedge at the front, below its thickness at the back; zero for one that ends in an edge.</summary>
    public Length FrontThickness { get; init; }

    /// <summary>The front of a waterfall cushion.</summary>
    public FrontShape Front { get; init; }

    /// <summary>The ends of a bolster; null for another construction.</summary>
    public BolsterEnds? Ends { get; init; }

    /// <summary>The flange of a flanged cushion; null for another construction.</summary>
    public FlangeSpecification? Flange { get; init; }

    /// <summary>Number of gores of a pouf's top and wall; zero for a drum.</summary>
    public int Gores { get; init; }

    /// <summary>Channels in the top; null for none.</summary>
    public ChannelSpecification? Channels { get; init; }

    /// <summary>How far the corners of a knife-edge cushion are drawn in; zero for none.</summary>
    public Length CornerTaper { get; init; }

    /// <summary>How the workroom makes what the cushion does not say.</summary>
    public WorkroomPractice Practice { get; init; } = WorkroomPractice.Imperial;

    /// <summary>Seam allowance for each edge.</summary>
    public required Length SeamAllowance { get; init; }

    /// <summary>How the boxing is joined.</summary>
    public BoxingJoins Joins { get; init; }

    /// <summary>How the cover opens.</summary>
    public required ClosureSpecification Closure { get; init; }

    /// <summary>Whether the cover comes off to be washed: its closure opens again, and no tufts hold it to its filling.</summary>
    public bool IsWashable => Closure is not HandSewnClosure && Trim.Tufts is null;

    /// <summary>What is done to its raw edges; nothing to those of a cover that is sewn shut.</summary>
    public RawEdgeFinish EdgeFinish { get; init; } = RawEdgeFinish.None;

    /// <summary>A handle; null for none.</summary>
    public HandleSpecification? Handle { get; init; }

    /// <summary>What is added to the cover.</summary>
    public TrimSpecification Trim { get; init; } = TrimSpecification.None;

    /// <summary>What fills it; null for nothing.</summary>
    public FillSpecification? Fill { get; init; }

    /// <summary>The fabric of each part.</summary>
    public required FabricRoles Fabrics { get; init; }

    /// <summary>Which of its parts are matched to the repeat of their fabric.</summary>
    public MatchSpecification Match { get; init; } = MatchSpecification.Usual;

    /// <summary>Which way its fabrics run; null for each as the fabric says.</summary>
    public Grain? Grain { get; init; }

    /// <summary>Whether it is railroaded where either way will do.</summary>
    public bool RailroadedWhereOpen { get; init; }

    /// <summary>Whether a fabric is railroaded on it. All its visible pieces of that fabric run this way.</summary>
    public bool IsRailroaded(FabricSpecification fabric) =>
        (Grain ?? fabric.Grain) switch
        {
            Specifications.Fabrics.Grain.Railroaded => true,
            Specifications.Fabrics.Grain.Either => RailroadedWhereOpen,
            _ => false,
        };

    /// <summary>Extent from left to right.</summary>
    public Length Width => Outline.Width;

    /// <summary>Extent from front to back.</summary>
    public Length Depth => Outline.Depth;

    /// <summary>Finished length of what belongs to one of its sides; across the bottom, the width.</summary>
    public Length SideLength(Side side) =>
        side == Side.Bottom
            ? Width
            : Outline.Sides.Where(stretch => stretch.Side == side).Aggregate(Length.Zero, (sum, stretch) => sum + stretch.Length);
}
