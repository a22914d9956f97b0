using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Specifications.Closures;

/// <summary>Two hemmed strips or flaps that overlap, held by buttons and buttonholes.</summary>
/// <param name="Side">Where it stands.</param>
/// <param name="Return">How far its section runs round each corner.</param>
/// <param name="Fold">Depth of each turn of the hems.</param>
/// <param name="Overlap">How far they overlap.</param>
/// <param name="Diameter">Diameter of the buttons.</param>
public sealed record ButtonClosure(Side Side, Length Return, Length Fold, Length Overlap, Length Diameter)
    : OverlappingClosure(Side, Return, Fold, Overlap)
{
    /// <inheritdoc />
    public override ClosureKind Kind => ClosureKind.Buttons;

    /// <summary>Furthest distance between buttons: 4 in, so that they stand 3 to 4 in apart on a run of 12 in or more (common practice, no
    /// source).</summary>
    public static Length Spacing { get; } = Length.FromInches(4);

    /// <summary>The overlap that holds a button: its diameter and a margin of 1/4 in at each edge of the placket (common practice, no
    /// source).</summary>
    public static Length UsualOverlap(Length diameter) => diameter + 2 * Length.FromInches(0.25m);

    /// <summary>Length of a buttonhole: diameter + thickness + 1/8 in (common practice, no source), the thickness taken as a fifth of the
    /// diameter.</summary>
    public Length Buttonhole => Diameter + Length.FromNanometres(Diameter.Nanometres / 5) + Length.FromInches(0.125m);
}
