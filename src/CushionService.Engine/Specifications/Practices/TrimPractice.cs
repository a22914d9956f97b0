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
            TuftButton = Length.FromInches(0.875m),
        };

    /// <summary>A workroom that measures in millimetres: cord is sold by whole millimetres.</summary>
    public static TrimPractice Metric { get; } = Imperial with { CordDiameter = Length.FromMillimetres(4) };

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

    /// <summary>Straps across the underside.</summary>
    public int StrapCount { get; init; } = 2;

    /// <summary>Diameter of a tuft's buttons.</summary>
    public required Length TuftButton { get; init; }

    /// <summary>Length of a ruffle's strip for each length of seam.</summary>
    public Fraction RuffleFullness { get; init; } = Fraction.Of(2, 1);
}
