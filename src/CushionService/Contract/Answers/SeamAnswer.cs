namespace CushionService.Contract.Answers;

/// <summary>A seam of a cushion: what is sewn to what, over which finished length.</summary>
public sealed record SeamAnswer
{
    /// <summary>The cushion.</summary>
    public required string Cushion { get; init; }

    /// <summary>The edges on one side, each as part and edge: <c>"top.front"</c>.</summary>
    public required IReadOnlyList<string> One { get; init; }

    /// <summary>The edges on the other side.</summary>
    public required IReadOnlyList<string> Other { get; init; }

    /// <summary>Finished length.</summary>
    public required double Length { get; init; }

    /// <summary>How far edges of one side lie over each other; 0 when they do not.</summary>
    public required double Lap { get; init; }

    /// <summary>Length of the other side for each length of this one, where it is gathered; null where they agree.</summary>
    public double? Fullness { get; init; }
}
