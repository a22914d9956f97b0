using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Practices;

/// <summary>The sizes of closures where an order does not say, and what a closure needs at least.</summary>
/// <remarks>Common practice, no source. Metric figures are round ones of their own, not inches converted.</remarks>
public sealed record ClosurePractice
{
    /// <summary>A workroom that measures in inches.</summary>
    public static ClosurePractice Imperial { get; } =
        new()
        {
            TapeWidth = Length.FromInches(0.75m),
            TapeClearance = Length.FromInches(0.5m),
            ButtonDiameter = Length.FromInches(0.75m),
            ButtonSpacing = Length.FromInches(4),
            ButtonMargin = Length.FromInches(0.25m),
            ButtonholeEase = Length.FromInches(0.125m),
            TieLength = Length.FromInches(8),
            TieWidth = Length.FromInches(0.5m),
            TieSpacing = Length.FromInches(6),
            TiedOverlap = Length.FromInches(1.5m),
            Envelope = new EnvelopePractice(
                (Length.FromInches(14), Length.FromInches(3)),
                (Length.FromInches(18), Length.FromInches(4)),
                Length.FromInches(5)
            ),
            ShortestZipper = Length.FromInches(2),
            ZipperGuard = Length.FromInches(1),
            ZipperKeptClosed = Length.FromInches(2.5m),
            ZipperStockStep = Length.FromInches(2),
            ShortestReturn = Length.FromInches(1),
        };

    /// <summary>A workroom that measures in millimetres.</summary>
    public static ClosurePractice Metric { get; } =
        new()
        {
            TapeWidth = Length.FromMillimetres(20),
            TapeClearance = Length.FromMillimetres(13),
            ButtonDiameter = Length.FromMillimetres(20),
            ButtonSpacing = Length.FromMillimetres(100),
            ButtonMargin = Length.FromMillimetres(6),
            ButtonholeEase = Length.FromMillimetres(3),
            TieLength = Length.FromMillimetres(200),
            TieWidth = Length.FromMillimetres(13),
            TieSpacing = Length.FromMillimetres(150),
            TiedOverlap = Length.FromMillimetres(40),
            Envelope = new EnvelopePractice(
                (Length.FromMillimetres(350), Length.FromMillimetres(80)),
                (Length.FromMillimetres(450), Length.FromMillimetres(100)),
                Length.FromMillimetres(130)
            ),
            ShortestZipper = Length.FromMillimetres(50),
            ZipperGuard = Length.FromMillimetres(25),
            ZipperKeptClosed = Length.FromMillimetres(60),
            ZipperStockStep = Length.FromMillimetres(50),
            ShortestReturn = Length.FromMillimetres(25),
        };

    /// <summary>Width of hook-and-loop tape.</summary>
    public required Length TapeWidth { get; init; }

    /// <summary>How far tape stays clear of each end of its section.</summary>
    public required Length TapeClearance { get; init; }

    /// <summary>Diameter of a button.</summary>
    public required Length ButtonDiameter { get; init; }

    /// <summary>Furthest distance between buttons; 4 in puts them 3 to 4 in apart on a run of 12 in or more.</summary>
    public required Length ButtonSpacing { get; init; }

    /// <summary>Margin beyond a button at each edge of its placket.</summary>
    public required Length ButtonMargin { get; init; }

    /// <summary>What a buttonhole is longer than its button is wide and thick.</summary>
    public required Length ButtonholeEase { get; init; }

    /// <summary>Finished length of each tie of a closure.</summary>
    public required Length TieLength { get; init; }

    /// <summary>Finished width of each tie of a closure.</summary>
    public required Length TieWidth { get; init; }

    /// <summary>Furthest distance between pairs of ties.</summary>
    public required Length TieSpacing { get; init; }

    /// <summary>How far the strips of a boxing overlap under ties.</summary>
    public required Length TiedOverlap { get; init; }

    /// <summary>How far the flaps of an envelope overlap.</summary>
    public required EnvelopePractice Envelope { get; init; }

    /// <summary>The shortest zipper that is worth setting into a seam.</summary>
    public required Length ShortestZipper { get; init; }

    /// <summary>What both ends of a zipper's section together keep closed.</summary>
    public required Length ZipperGuard { get; init; }

    /// <summary>What a zipper in a side seam is shorter than the side, both ends together.</summary>
    public required Length ZipperKeptClosed { get; init; }

    /// <summary>What stock lengths of zippers usually rise by.</summary>
    public required Length ZipperStockStep { get; init; }

    /// <summary>The shortest return of a closure's section round a corner that is worth sewing.</summary>
    public required Length ShortestReturn { get; init; }

    /// <summary>The overlap that holds a button: its diameter, and the margin at each edge.</summary>
    public Length ButtonedOverlap(Length diameter) => diameter + 2 * ButtonMargin;

    /// <summary>Length of a buttonhole: diameter + thickness + ease, the thickness taken as a fifth of the diameter.</summary>
    public Length Buttonhole(Length diameter) => diameter + Length.FromNanometres(diameter.Nanometres / 5) + ButtonholeEase;

    /// <summary>What one button takes of an opening: its hole, and as much at both ends of it as at the edges of the overlap.</summary>
    /// <param name="diameter">Diameter of the button.</param>
    public Length RoomForButton(Length diameter) => Buttonhole(diameter) + 2 * ButtonMargin;
}
