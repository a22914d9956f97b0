using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns;
using CushionService.Engine.Specifications;

namespace CushionService.Specifying;

/// <summary>A cushion's fields as they apply, defaults taken; null where a field is missing or cannot be read.</summary>
internal readonly struct CushionReading(Cushion cushion, OrderReading order)
{
    private static readonly Length UsualFold = Engine.Measures.Length.FromInches(0.5m);
    private static readonly Length UsualTape = Engine.Measures.Length.FromInches(0.75m);

    public ConstructionOffer? Offer { get; } = cushion.Construction is { } kind && Enum.IsDefined(kind) ? Constructions.Of(kind).Offer : null;

    public Length? Width => order.Length(cushion.Outline?.Width);

    public Length? Depth => order.Length(cushion.Outline?.Depth);

    public Length? Thickness => order.Length(cushion.Thickness);

    public Length? SeamAllowance => Or(cushion.SeamAllowance, order.Practice.SeamAllowance);

    public ClosureKind? Closure => cushion.Closure?.Kind;

    public Side? Side => cushion.Closure?.Side
        ?? (Closure is { } closure && Offer?.SidesFor(closure) is [var first, ..] ? first : null);

    /// <summary>A zipper at the back stands in a section of its own that a wrapped strip meets; other boxings join at the corners.</summary>
    public BoxingJoins Joins => cushion.Boxing?.Joins
        ?? (Closure == ClosureKind.Zipper && Side == Engine.Specifications.Side.Back ? BoxingJoins.Back : BoxingJoins.Corners);

    public bool HasReturns => Offer is { Joins.Length: > 0 } && Joins == BoxingJoins.Back && Closure is ClosureKind.Zipper or ClosureKind.HookAndLoop;

    public Length? Return => !HasReturns ? Engine.Measures.Length.Zero
        : Or(cushion.Closure?.Return, Closure == ClosureKind.Zipper ? order.Practice.ZipperReturn : Engine.Measures.Length.Zero);

    public Length? TurnUnder => Or(cushion.Closure?.TurnUnder, order.Practice.ZipperTurnUnder);

    public Length? Fold => Or(cushion.Closure?.Fold, UsualFold);

    public Length? TapeWidth => Or(cushion.Closure?.TapeWidth, UsualTape);

    /// <summary>What the overlap lies across: the boxing's height, or the depth of a divided face.</summary>
    public Length? Across => Side == Engine.Specifications.Side.Bottom ? Depth : Thickness;

    public bool StripsAsSides => cushion.Closure?.Strips == HookAndLoopStrips.AsSides;

    public Length? Overlap => Closure switch
    {
        ClosureKind.HookAndLoop when StripsAsSides => Across is { } height && SeamAllowance is { } seam && Fold is { } fold
            ? HookAndLoopClosure.OverlapAsSides(height, seam, fold) : null,
        ClosureKind.HookAndLoop => cushion.Closure?.Overlap is null
            ? TapeWidth is { } tape ? HookAndLoopClosure.NarrowestOverlap(tape) : null
            : order.Length(cushion.Closure.Overlap),
        ClosureKind.Envelope => cushion.Closure?.Overlap is null
            ? Across is { } across ? EnvelopeClosure.UsualOverlap(across) : null
            : order.Length(cushion.Closure.Overlap),
        _ => null,
    };

    public Side HandleSide => cushion.Handle?.Side ?? Engine.Specifications.Side.Front;

    public Length? SideLength(Side side) => side is Engine.Specifications.Side.Left or Engine.Specifications.Side.Right ? Depth : Width;

    public string? Top => cushion.Fabrics?.Top ?? order.OnlyFabric;

    private Length? Or(Contract.Measure? measure, Length usual) => measure is null ? usual : order.Length(measure);
}
