namespace CushionService.Engine.Patterns.Panels;

/// <summary>Which half of a face that a closure divides.</summary>
public enum FaceHalf
{
    /// <summary>The face is whole.</summary>
    Whole,

    /// <summary>The half at the front.</summary>
    Front,

    /// <summary>The half at the back.</summary>
    Back,

    /// <summary>The half at the left of the face as it is cut.</summary>
    Left,

    /// <summary>The half at the right.</summary>
    Right,
}
