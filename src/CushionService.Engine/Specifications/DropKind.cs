namespace CushionService.Engine.Specifications;

/// <summary>How a repeat moves from one column of motifs to the next.</summary>
public enum DropKind
{
    /// <summary>Motifs stand level across the cloth.</summary>
    Straight,

    /// <summary>Every other column stands half a repeat lower.</summary>
    Half,
}
