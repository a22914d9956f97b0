using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;
using CushionService.Nesting;

namespace CushionService.Engine.Tests;

/// <summary>Orders as a test needs them: a plain cushion on a plain fabric, and what it changes.</summary>
internal static class Trade
{
    public static Length In(decimal inches) => Length.FromInches(inches);

    public static Length Mm(decimal millimetres) => Length.FromMillimetres(millimetres);

    public static Fraction Percent(long percent) => Fraction.Of(percent, 100);

    public static SaleRule ByEighthYard { get; } = new(SaleUnit.Yd, In(4.5m), Length.Zero);

    /// <summary>Plain fabric of 54 in without selvedges, sold by the eighth of a yard.</summary>
    public static FabricSpecification Fabric { get; } =
        new()
        {
            Id = "main",
            Width = In(54),
            Sold = ByEighthYard,
        };

    public static ZipperClosure BackZipper { get; } = new(Side.Back, In(3), In(0.75m));

    public static HandSewnClosure HandSewn { get; } = new(Side.Back);

    public static HookAndLoopClosure HookAndLoop(decimal fold, decimal overlap, Side side = Side.Back) =>
        new(side, Length.Zero, In(fold), In(overlap), In(0.75m));

    /// <summary>A folded strap of 1 1/4 by 10 1/2 in whose ends are sewn 9 3/4 in apart.</summary>
    public static HandleSpecification Strap { get; } = new(HandleKind.FoldedStrap, Side.Front, In(1.25m), In(10.5m), In(9.75m));

    public static CushionSpecification Boxed(
        decimal width,
        decimal depth,
        decimal thickness,
        ClosureSpecification closure,
        BoxingJoins joins = BoxingJoins.Corners
    ) => KnifeEdge(width, depth, closure) with { Construction = Construction.Boxed, Thickness = In(thickness), Joins = joins };

    public static CushionSpecification KnifeEdge(decimal width, decimal depth, ClosureSpecification closure) =>
        new()
        {
            Id = "seat",
            Construction = Construction.KnifeEdge,
            Outline = new RectangleOutline(In(width), In(depth)),
            SeamAllowance = In(0.5m),
            Closure = closure,
            Fabrics = new FabricRoles("main", "main", "main", "main"),
        };

    public static OrderSpecification Order(CushionSpecification cushion, FabricSpecification? fabric = null) =>
        new()
        {
            Unit = LengthUnit.Inch,
            Effort = Effort.Quick,
            Cushions = [cushion],
            Fabrics = [fabric ?? Fabric],
            Workroom = WorkroomPractice.Imperial,
        };

    public static OrderSpecification Order(FabricSpecification fabric, params LoosePieceSpecification[] pieces) =>
        new()
        {
            Unit = LengthUnit.Inch,
            Effort = Effort.Quick,
            Pieces = [.. pieces],
            Fabrics = [fabric],
            Workroom = WorkroomPractice.Imperial,
        };

    public static LoosePieceSpecification Piece(string id, int quantity, decimal width, decimal length, Rotations? rotations = null) =>
        new(id, $"/pieces/{id}", "main", quantity, In(width), In(length), rotations, []);

    public static Quote Quote(OrderSpecification order) => QuotePipeline.Of(Drafting.Of(order), CancellationToken.None);

    /// <summary>What is cut, as a clerk would list it: <c>top 19 × 19; bottom 19 × 19</c>, widths before lengths.</summary>
    public static string CutList(OrderSpecification order) =>
        string.Join(
            "; ",
            Drafting
                .Of(order)
                .Pieces.Select(piece =>
                    $"{piece.Part} {LengthText.FormatNumber(piece.Width, order.Unit)} × {LengthText.FormatNumber(piece.Length, order.Unit)}"
                )
        );
}
