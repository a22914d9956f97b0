using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Nesting;

namespace CushionService.Engine.Cutting;

/// <summary>A piece to cut: a panel with its allowances, or a piece of the maker's own.</summary>
public sealed record CutPiece
{
    /// <summary>Distinct within the order: the cushion's id and the part, or the loose piece's id.</summary>
    public required string Id { get; init; }

    /// <summary>The cushions that a welt is cut for; empty for another piece.</summary>
    public ImmutableArray<WeltShare> Serves { get; init; } = [];

    /// <summary>Whether it is cut for a cushion, alone or with others.</summary>
    /// <param name="cushion">The id of a cushion.</param>
    public bool IsFor(string cushion)
    {
        foreach (WeltShare share in Serves)
        {
            if (share.Cushion == cushion)
            {
                return true;
            }
        }

        return Cushion?.Id == cushion;
    }

    /// <summary>What people call it.</summary>
    public PieceName Name => new(Id, Cushion?.Label, Part);

    /// <summary>The cushion that it belongs to; null for a loose piece.</summary>
    public CushionSpecification? Cushion { get; init; }

    /// <summary>The panel that it is cut for; null for a loose piece.</summary>
    public Panel? Panel { get; init; }

    /// <summary>Its place in the order, as a JSON Pointer.</summary>
    public required string Pointer { get; init; }

    /// <summary>The id of its fabric.</summary>
    public required string Fabric { get; init; }

    /// <summary>How many are cut, at least 1.</summary>
    public required int Quantity { get; init; }

    /// <summary>Cut width as drawn: across the fabric, or along it when railroaded.</summary>
    public required Length Width { get; init; }

    /// <summary>Cut length as drawn: along the fabric, or across it when railroaded.</summary>
    public required Length Length { get; init; }

    /// <summary>The terms of the cut width; nothing for a loose piece.</summary>
    public CutSize WidthTerms { get; init; }

    /// <summary>The terms of the cut length; nothing for a loose piece.</summary>
    public CutSize LengthTerms { get; init; }

    /// <summary>The turns that it may be laid in, from as drawn or, when railroaded, from a quarter turn.</summary>
    public required Rotations Rotations { get; init; }

    /// <summary>Whether it is laid a quarter turn counter-clockwise from as drawn.</summary>
    public bool IsRailroaded { get; init; }

    /// <summary>Extent across the fabric as its grain asks.</summary>
    public Length Across => IsRailroaded ? Length : Width;

    /// <summary>Extent along the fabric as its grain asks.</summary>
    public Length Along => IsRailroaded ? Width : Length;

    /// <summary>Corners of the cut outline, counter-clockwise, within the cut width and length; empty for a rectangle.</summary>
    public ImmutableArray<Point> Outline { get; init; } = [];

    /// <summary>The welt that is cut from it, over all copies; null when none is.</summary>
    public WeltSupply? Welt { get; init; }

    /// <summary>Where the panel's (0, 0) lies within the cut piece.</summary>
    public Point Origin { get; init; }

    /// <summary>Where a point of the drawn piece lies from the lower left corner of the piece as its grain asks.</summary>
    /// <param name="drawn">A point from the lower left corner of the piece as drawn.</param>
    public Point AsLaid(Point drawn) => IsRailroaded ? new Point(Length - drawn.Y, drawn.X) : drawn;

    /// <summary>What it becomes.</summary>
    public PartName Part => Panel?.Part ?? new PartName(PartKind.Piece);

    /// <summary>Area of one copy.</summary>
    public Area Area => Outline.IsEmpty ? Area.Of(Width, Length) : Polygon.Area(Outline);

    /// <summary>Cuts a panel: its outline moved outward edge by edge by each edge's allowance; a rectangle then up to the
    /// workroom's cutting step, or a face to the nearest.</summary>
    /// <remarks>A rectangle offset by s at every edge is 2s larger both ways (general geometry).</remarks>
    /// <param name="panel">The panel; its finish at each edge says the allowance.</param>
    /// <param name="cushion">The cushion that it is of.</param>
    /// <param name="fabric">The fabric of its role, which says how it may be turned.</param>
    /// <param name="cuttingStep">The workroom's, above zero.</param>
    /// <param name="faces">How faces are rounded; strips and additions always go up.</param>
    public static CutPiece Of(
        Panel panel,
        CushionSpecification cushion,
        FabricSpecification fabric,
        Length cuttingStep,
        FaceRounding faces = FaceRounding.Up
    )
    {
        // Only the faces follow the workroom's rounding: strips and additions go up, for they must reach round.
        FaceRounding rounding = !panel.IsAddition && panel.Role != FabricRole.Sides ? faces : FaceRounding.Up;
        (CutSize across, CutSize along) = (CutSize.Across(panel), CutSize.Along(panel));
        (Point origin, ImmutableArray<Point> outline) = (default, []);
        if (panel.IsRectangle)
        {
            (across, along) = (across.Rounded(cuttingStep, rounding), along.Rounded(cuttingStep, rounding));
            origin = new Point(
                across.First.Allowance + (across.Cut - across.Exact).HalfUp(),
                along.First.Allowance + (along.Cut - along.Exact).HalfUp()
            );
        }
        else
        {
            (Point low, Point high, outline) = Template(panel);
            origin = new Point(-low.X, -low.Y);
            (across, along) = (
                across.AsTemplate(panel, -low.X, high.X - panel.Width),
                along.AsTemplate(panel, -low.Y, high.Y - panel.Height)
            );
        }

        bool free = TurnsFreely(panel.Role, fabric);
        return new CutPiece
        {
            Id = $"{cushion.Id}/{panel.Part}",
            Cushion = cushion,
            Panel = panel,
            Pointer = cushion.Pointer,
            Fabric = fabric.Id,
            Quantity = cushion.Quantity * panel.Copies,
            Width = across.Cut,
            Length = along.Cut,
            WidthTerms = across,
            LengthTerms = along,
            Origin = origin,
            Outline = outline,
            Rotations = free ? Rotations.QuarterTurns : fabric.Turns,
            IsRailroaded = !free && cushion.IsRailroaded(fabric),
        };
    }

    /// <summary>Takes a piece of the maker's own as it is.</summary>
    /// <param name="piece">The maker's piece; its size is the cut size, so that no allowance is added.</param>
    /// <param name="fabric">Its fabric; on a one-way fabric the piece is never turned, whatever it allows itself.</param>
    public static CutPiece Of(LoosePieceSpecification piece, FabricSpecification fabric) =>
        new()
        {
            Id = piece.Id,
            Pointer = piece.Pointer,
            Fabric = fabric.Id,
            Quantity = piece.Quantity,
            Width = piece.Width,
            Length = piece.Length,
            Rotations = fabric.OneWay
                ? Rotations.None
                : piece.Rotations ?? (fabric.Grain == Grain.Either ? Rotations.QuarterTurns : Rotations.HalfTurn),
            Outline = piece.Outline,
        };

    // What is hidden turns freely, and so do small parts on which no one sees which way they run (common practice, no source).
    private static bool TurnsFreely(FabricRole role, FabricSpecification fabric) =>
        role == FabricRole.InnerCover || (role is FabricRole.Ties or FabricRole.Buttons && !fabric.OneWay);

    // A template is cut along its own line, so its corners are not rounded to the cutting step.
    private static (Point Low, Point High, ImmutableArray<Point> Outline) Template(Panel panel)
    {
        List<Point> corners = OutlineOffset.Of(panel);
        var low = new Point(corners.Min(corner => corner.X), corners.Min(corner => corner.Y));
        return (
            low,
            new Point(corners.Max(corner => corner.X), corners.Max(corner => corner.Y)),
            [.. corners.Select(corner => corner.Moved(-low.X, -low.Y))]
        );
    }
}
