namespace CushionService.Nesting.Rectangles.Beams;

/// <summary>A rectangle that could be laid next.</summary>
/// <param name="Kind">Which kind.</param>
/// <param name="Turned">Whether its sides are exchanged.</param>
/// <param name="AtLeft">Whether it lies at the left end of its gap, else at the right.</param>
internal readonly record struct BeamMove(int Kind, bool Turned, bool AtLeft)
{
    /// <summary>The move as a number below four times the number of kinds, so that moves can be sorted.</summary>
    public int Code => Kind * 4 + (Turned ? 2 : 0) + (AtLeft ? 1 : 0);

    /// <summary>The move of a number.</summary>
    public static BeamMove Of(int code) => new(code >> 2, (code & 2) != 0, (code & 1) != 0);
}
