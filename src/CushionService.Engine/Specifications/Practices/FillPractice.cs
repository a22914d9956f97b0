using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fillings;

namespace CushionService.Engine.Specifications.Practices;

/// <summary>How foam and loose fills are fitted where an order does not say, and where a fit becomes unwise.</summary>
/// <remarks>Common practice, no source. How much larger foam is cut is the workroom's
/// <see cref="WorkroomPractice.FoamOversize"/>.</remarks>
public sealed record FillPractice
{
    /// <summary>A workroom that measures in inches.</summary>
    public static FillPractice Imperial { get; } =
        new()
        {
            LargestOversize = Length.FromInches(0.5m),
            LargestCoatedOversize = Length.FromInches(0.25m),
            FormOversize = Length.FromInches(1),
            LargestFormOversize = Length.FromInches(2),
            SmallCover = Length.FromInches(12),
            CrownInset = Length.FromInches(2),
        };

    /// <summary>A workroom that measures in millimetres.</summary>
    public static FillPractice Metric { get; } =
        new()
        {
            LargestOversize = Length.FromMillimetres(12),
            LargestCoatedOversize = Length.FromMillimetres(6),
            FormOversize = Length.FromMillimetres(20),
            LargestFormOversize = Length.FromMillimetres(50),
            SmallCover = Length.FromMillimetres(300),
            CrownInset = Length.FromMillimetres(50),
        };

    /// <summary>Foam is cut up to this much over the cover for a tight fit; more is hard to put in and strains the seams.</summary>
    public required Length LargestOversize { get; init; }

    /// <summary>The same under coated fabric, which does not give.</summary>
    public required Length LargestCoatedOversize { get; init; }

    /// <summary>How much larger than its cover a form is each way: 1 in, or 2 cm.</summary>
    public required Length FormOversize { get; init; }

    /// <summary>How much larger a form is that makes a plump cushion; more is too tight: 2 in, or 5 cm.</summary>
    public required Length LargestFormOversize { get; init; }

    /// <summary>A side shorter than this has a form no more than <see cref="FormOversize"/> larger: 12 in, or 30 cm.</summary>
    public required Length SmallCover { get; init; }

    /// <summary>How far inside the foam's edge a crown ends all round: 2 in, or 5 cm.</summary>
    public required Length CrownInset { get; init; }

    /// <summary>How full a cover is packed with loose fill, as a fraction of its volume: 0.8 to 1 of what a sealed bag holds.</summary>
    public static decimal Plumpness(Fullness fullness) =>
        fullness switch
        {
            Fullness.Soft => LeastPlumpness,
            Fullness.Medium => 0.9m,
            _ => 1,
        };

    /// <summary>Foam folds in half where it is at least three times as wide as it is thick: beyond that the fold is thicker than the
    /// block is wide, and it springs open (common practice, no source).</summary>
    public const int FoldedThicknesses = 3;

    /// <summary>Foam that is firmer than 70 lb does not fold, bonded scrap and base foam among it (common practice, no source).</summary>
    public static Force FirmestFolded { get; } = Force.FromPounds(70);

    /// <summary>The least that fills a cover: less leaves it slack.</summary>
    public const decimal LeastPlumpness = 0.8m;

    /// <summary>The most that a cover is overfilled: more strains its seams (common practice, no source).</summary>
    public const decimal MostPlumpness = 1.2m;
}
