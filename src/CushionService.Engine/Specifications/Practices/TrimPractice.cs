using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Practices;

/// <summary>The sizes and numbers of what is added to a cover, where an order does not say, and where it becomes unwise.</summary>
/// <remarks>Common practice, no source.</remarks>
public sealed record TrimPractice
{
    /// <summary>A workroom that measures in inches.</summary>
    public static TrimPractice Imperial { get; } =
        new()
        {
            CordDiameter = Length.FromInches(0.15625m),
            TieLength = Length.FromInches(12),
            LongestTie = Length.FromInches(14),
            TieWidth = Length.FromInches(0.5m),
            StrapWidth = Length.FromInches(1),
            VentSpacing = Length.FromInches(0.75m),
            TuftButton = Length.FromInches(0.875m),
            TwineToKnot = Length.FromInches(12),
            WeltOverlap = Length.FromInches(2),
            WeltJoin = Length.FromInches(0.25m),
            RuffleHem = Length.FromInches(0.25m),
            TieFromCorner = Length.FromInches(1),
            TieEndFold = Length.FromInches(0.5m),
            TubeSeam = Length.FromInches(0.25m),
            HandleEndFold = Length.FromInches(0.5m),
            PocketTurnUnder = Length.FromInches(0.375m),
            PocketHem = Length.FromInches(0.5m),
            EndCord = Length.FromInches(30),
            PipingDepth = Length.FromInches(0.125m),
            LipCordDiameter = Length.FromInches(0.375m),
            FringeDepth = Length.FromInches(2),
            GimpWidth = Length.FromInches(0.5m),
            WidestFlatTrim = Length.FromInches(2),
            LeastDepth = Length.FromInches(0.5m),
            TopstitchDistance = Length.FromInches(0.25m),
            FrenchSeam = Length.FromInches(0.25m),
            LeastFrenchSeam = Length.FromInches(0.125m),
            BindingEnd = Length.FromInches(0.5m),
            BindingCorner = Length.FromInches(0.5m),
        };

    /// <summary>A workroom that measures in millimetres.</summary>
    public static TrimPractice Metric { get; } =
        new()
        {
            CordDiameter = Length.FromMillimetres(4),
            TieLength = Length.FromMillimetres(300),
            LongestTie = Length.FromMillimetres(350),
            TieWidth = Length.FromMillimetres(13),
            StrapWidth = Length.FromMillimetres(25),
            VentSpacing = Length.FromMillimetres(20),
            TuftButton = Length.FromMillimetres(22),
            TwineToKnot = Length.FromMillimetres(300),
            WeltOverlap = Length.FromMillimetres(50),
            WeltJoin = Length.FromMillimetres(6),
            RuffleHem = Length.FromMillimetres(6),
            TieFromCorner = Length.FromMillimetres(25),
            TieEndFold = Length.FromMillimetres(13),
            TubeSeam = Length.FromMillimetres(6),
            HandleEndFold = Length.FromMillimetres(13),
            PocketTurnUnder = Length.FromMillimetres(10),
            PocketHem = Length.FromMillimetres(10),
            EndCord = Length.FromMillimetres(750),
            PipingDepth = Length.FromMillimetres(3),
            LipCordDiameter = Length.FromMillimetres(10),
            FringeDepth = Length.FromMillimetres(50),
            GimpWidth = Length.FromMillimetres(12),
            WidestFlatTrim = Length.FromMillimetres(50),
            LeastDepth = Length.FromMillimetres(12),
            TopstitchDistance = Length.FromMillimetres(6),
            FrenchSeam = Length.FromMillimetres(6),
            LeastFrenchSeam = Length.FromMillimetres(3),
            BindingEnd = Length.FromMillimetres(13),
            BindingCorner = Length.FromMillimetres(13),
        };

    /// <summary>Diameter of the cord in a welt: 5/32 in, or 4 mm.</summary>
    public required Length CordDiameter { get; init; }

    /// <summary>Finished length of each tie.</summary>
    public required Length TieLength { get; init; }

    /// <summary>Longer ties can tangle or strangle.</summary>
    public required Length LongestTie { get; init; }

    /// <summary>Finished width of each tie.</summary>
    public required Length TieWidth { get; init; }

    /// <summary>Pairs of ties.</summary>
    public int TiePairs { get; init; } = 2;

    /// <summary>Finished width of each strap across the underside.</summary>
    public required Length StrapWidth { get; init; }

    /// <summary>The least distance between the centres of two vents.</summary>
    public required Length VentSpacing { get; init; }

    /// <summary>Straps across the underside.</summary>
    public int StrapCount { get; init; } = 2;

    /// <summary>Diameter of a tuft's buttons.</summary>
    public required Length TuftButton { get; init; }

    /// <summary>Twine of a tuft beyond twice the thickness, to pull and knot with.</summary>
    public required Length TwineToKnot { get; init; }

    /// <summary>How far the ends of a welt's loop lie over each other.</summary>
    public required Length WeltOverlap { get; init; }

    /// <summary>Allowance of a join between strips of a welt, on each.</summary>
    public required Length WeltJoin { get; init; }

    /// <summary>Depth of each turn of a single ruffle's double hem.</summary>
    public required Length RuffleHem { get; init; }

    /// <summary>How far the outermost pairs of ties stand from the ends of their side.</summary>
    public required Length TieFromCorner { get; init; }

    /// <summary>Fabric turned in at the free end of a tie.</summary>
    public required Length TieEndFold { get; init; }

    /// <summary>Seam of a tie or strap that is a turned tube.</summary>
    public required Length TubeSeam { get; init; }

    /// <summary>Fabric or webbing turned in at each end of a handle: 1/2 in (US Army TM 10-8340-208-13, chape replacement).</summary>
    public required Length HandleEndFold { get; init; }

    /// <summary>Fabric turned under at the sides and below a pocket: 3/8 in (US Army TM 10-8400-203-23, patches).</summary>
    public required Length PocketTurnUnder { get; init; }

    /// <summary>Depth of each turn of the hem at a pocket's mouth.</summary>
    public required Length PocketHem { get; init; }

    /// <summary>Cord to tie one end of a bolster: twice round the tie, a bow and its ends.</summary>
    public required Length EndCord { get; init; }

    /// <summary>How far flat piping shows beyond its seam.</summary>
    public required Length PipingDepth { get; init; }

    /// <summary>Diameter of a lip cord.</summary>
    public required Length LipCordDiameter { get; init; }

    /// <summary>How far a fringe hangs.</summary>
    public required Length FringeDepth { get; init; }

    /// <summary>Width of a gimp.</summary>
    public required Length GimpWidth { get; init; }

    /// <summary>The most that flat piping shows, and the widest gimp.</summary>
    public required Length WidestFlatTrim { get; init; }

    /// <summary>The least depth of a ruffle, a flange or a fringe.</summary>
    public required Length LeastDepth { get; init; }

    /// <summary>From a seam to a row of topstitching beside it, and on to the next row.</summary>
    public required Length TopstitchDistance { get; init; }

    /// <summary>Depth of the second row of a French seam.</summary>
    public required Length FrenchSeam { get; init; }

    /// <summary>The least depth of the first row of a French seam.</summary>
    public required Length LeastFrenchSeam { get; init; }

    /// <summary>Tape turned under or lapped at each end of a binding.</summary>
    public required Length BindingEnd { get; init; }

    /// <summary>Tape that the mitre of a binding takes at each corner.</summary>
    public required Length BindingCorner { get; init; }

    /// <summary>Length of a ruffle's strip for each length of seam.</summary>
    public Fraction RuffleFullness { get; init; } = Fraction.Of(2, 1);
}
