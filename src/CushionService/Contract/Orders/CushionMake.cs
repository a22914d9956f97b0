using System.ComponentModel.DataAnnotations;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Contract.Orders;

/// <summary>How cushions are made: what a cushion and the cushions of a bay have in common.</summary>
public abstract record CushionMake
{
    /// <summary>Names the cushion within the order: letters, digits, dots, hyphens and underscores, at most 64.</summary>
    [Required]
    [RegularExpression(Identifier.Pattern)]
    public string? Id { get; init; }

    /// <summary>A name for people; at most 200 characters; a blank one counts as none.</summary>
    [MaxLength(200)]
    public string? Label
    {
        get;
        init => field = string.IsNullOrWhiteSpace(value) ? null : value;
    }

    /// <summary>What it belongs to, such as a room; sums are made for each group. At most 100 characters.</summary>
    [MaxLength(100)]
    public string? Group { get; init; }

    /// <summary>How many are made the same; 1 when left out.</summary>
    [NumberRange(1, 1000, Default = "1")]
    public int? Quantity { get; init; }

    /// <summary>How the cushion is built.</summary>
    [Required]
    public Construction? Construction { get; init; }

    /// <summary>Finished thickness, of a wedge at the back, of a pouf its height; needed where the construction has one.</summary>
    [LengthRange("1/4 in", "24 in")]
    public Measure? Thickness { get; init; }

    /// <summary>Finished length of a bolster, end to end.</summary>
    [LengthRange("2 in", "120 in")]
    public Measure? Length { get; init; }

    /// <summary>Finished thickness of a wedge at the front; it ends in an edge when left out.</summary>
    [LengthRange("0 in", "24 in", Default = "0 in")]
    public Measure? FrontThickness { get; init; }

    /// <summary>The front of a waterfall cushion, seen from the side; square when left out.</summary>
    public FrontShape? Front { get; init; }

    /// <summary>The ends of a bolster; flat when left out.</summary>
    public Ends? Ends { get; init; }

    /// <summary>The flange round the body of a flanged cushion.</summary>
    public OxfordFlange? Flange { get; init; }

    /// <summary>Number of gores of a pouf's top and wall; a drum when left out.</summary>
    [NumberRange(3, 24)]
    public int? Gores { get; init; }

    /// <summary>Channels in the top; none when left out.</summary>
    public Channels? Channels { get; init; }

    /// <summary>
    /// How far the corners of a knife-edge cushion are drawn in, so that they do not stand out; not at all when left out.
    /// </summary>
    [LengthRange("1/8 in", "1 in")]
    public Measure? CornerTaper { get; init; }

    /// <summary>A cover for a loose fill within the cover; none when left out.</summary>
    public InnerCover? InnerCover { get; init; }

    /// <summary>Seam allowance for each edge; the workroom's when left out.</summary>
    [LengthRange("1/8 in", "2 in", Default = "the workroom's")]
    public Measure? SeamAllowance { get; init; }

    /// <summary>How the boxing of a boxed cushion is joined.</summary>
    public Boxing? Boxing { get; init; }

    /// <summary>How the cover opens.</summary>
    [Required]
    public Closure? Closure { get; init; }

    /// <summary>A handle; none when left out.</summary>
    public Handle? Handle { get; init; }

    /// <summary>The edging in the seams round the faces; nothing when left out.</summary>
    public Edging? Edging { get; init; }

    /// <summary>Ties in a seam; none when left out.</summary>
    public Ties? Ties { get; init; }

    /// <summary>Straps across the underside; none when left out.</summary>
    public Straps? Straps { get; init; }

    /// <summary>Tufts; none when left out.</summary>
    public Tufts? Tufts { get; init; }

    /// <summary>A pocket on the boxing; none when left out.</summary>
    public Pocket? Pocket { get; init; }

    /// <summary>What is on the underside besides its face; nothing when left out.</summary>
    public BaseKind? Base { get; init; }

    /// <summary>How many eyelets let the air out of coated fabric, on a side of the boxing; none when left out.</summary>
    [NumberRange(0, 12, Default = "0")]
    public int? Vents { get; init; }

    /// <summary>What is done with a face that is wider than its fabric; it is refused when left out.</summary>
    public FaceJoins? FaceJoins { get; init; }

    /// <summary>Which fabric each part is made of; may be left out when the order has one fabric.</summary>
    public CushionFabrics? Fabrics { get; init; }

    /// <summary>Which way its fabrics run, one way for all that is seen of it; as each fabric says when left out. A bolster's body
    /// lies with its length along the bolt; railroaded, its print is upright on a bolster that lies.</summary>
    public Grain? Grain { get; init; }

    /// <summary>What is done to the raw edges of the cover; when left out they are overedged where the cover opens and a fabric of it
    /// frays.</summary>
    public RawEdgeFinish? EdgeFinish { get; init; }

    /// <summary>Which of its parts are matched to the repeat of their fabric; faces and front boxing when left out.</summary>
    public Matching? Match { get; init; }

    /// <summary>What fills the cushion; nothing when left out.</summary>
    public Fill? Fill { get; init; }
}
