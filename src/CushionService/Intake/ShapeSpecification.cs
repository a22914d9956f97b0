using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Intake;

/// <summary>What belongs to some constructions alone, as it has been read.</summary>
internal sealed record ShapeSpecification
{
    /// <summary>Finished length of a bolster; zero for another construction.</summary>
    public Length Length { get; init; }

    /// <summary>Finished thickness of a wedge at the front.</summary>
    public Length FrontThickness { get; init; }

    /// <summary>The front of a waterfall cushion.</summary>
    public FrontShape Front { get; init; }

    /// <summary>The ends of a bolster; null for another construction.</summary>
    public BolsterEnds? Ends { get; init; }

    /// <summary>The flange of a flanged cushion; null for another construction.</summary>
    public FlangeSpecification? Flange { get; init; }

    /// <summary>Number of gores of a pouf; zero for a drum.</summary>
    public int Gores { get; init; }

    /// <summary>Channels in the top; null for none.</summary>
    public ChannelSpecification? Channels { get; init; }

    /// <summary>How far the corners are drawn in; zero for none.</summary>
    public Length CornerTaper { get; init; }

    /// <summary>A cushion with all this.</summary>
    /// <param name="plain">The cushion without.</param>
    public CushionSpecification On(CushionSpecification plain) =>
        plain with
        {
            Length = Length,
            FrontThickness = FrontThickness,
            Front = Front,
            Ends = Ends,
            Flange = Flange,
            Gores = Gores,
            Channels = Channels,
            CornerTaper = CornerTaper,
        };
}
