namespace CushionService.Engine.Specifications.Fabrics;

/// <summary>How a repeat moves from one column of motifs to the next.</summary>
public enum DropKind
{
    /// <summary>Motifs stand level across the fabric.</summary>
    Straight,

    /// <summary>Every other column is half a repeat lower.</summary>
    Half,
}
