namespace CushionService.Nesting.Rectangles.Beams;

/// <summary>A rectangle that could be laid next.</summary>
/// <param name="Way">Which kind, and whether turned: one of <see cref="BeamWays"/>.</param>
/// <param name="AtLeft">Whether it lies at the left end of its gap, else at the right.</param>
internal readonly record struct BeamMove(int Way, bool AtLeft)
{
    /// <summary>The move as a number, so that moves can be sorted.</summary>
    public int Code => (Way * 2) + (AtLeft ? 1 : 0);

    /// <summary>The move of a number.</summary>
    public static BeamMove Of(int code) => new(code >> 1, (code & 1) != 0);
}
