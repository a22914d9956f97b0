namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>Rectangles that shall fit a box, all in whole multiples of a common unit.</summary>
/// <param name="Across">Extent of each kind across the box, unturned.</param>
/// <param name="Along">Extent of each kind along the box, unturned.</param>
/// <param name="Turns">Whether each kind may be laid in both turns.</param>
/// <param name="Count">Copies of each kind.</param>
/// <param name="Width">Extent of the box across.</param>
/// <param name="Height">Extent of the box along.</param>
internal sealed record BoxContents(int[] Across, int[] Along, bool[] Turns, int[] Count, int Width, int Height)
{
    /// <summary>Extents of a kind across and along the box.</summary>
    /// <param name="kind">Which.</param>
    /// <param name="turned">Whether its sides are exchanged.</param>
    public (int Across, int Along) Size(int kind, bool turned) => turned ? (Along[kind], Across[kind]) : (Across[kind], Along[kind]);

    /// <summary>The same with the axes exchanged.</summary>
    public BoxContents Sideways => new(Along, Across, Turns, Count, Height, Width);
}
