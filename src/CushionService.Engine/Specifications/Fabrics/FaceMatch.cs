namespace CushionService.Engine.Specifications.Fabrics;

/// <summary>How the motif lies on the faces of a cushion.</summary>
public enum FaceMatch
{
    /// <summary>A motif lies in the middle of every face.</summary>
    Centred,

    /// <summary>Faces are cut wherever they lie best.</summary>
    Free,
}
