namespace CushionService.Documents.Pictures;

/// <summary>How a cushion is turned before it is looked at.</summary>
internal enum CameraTurn
{
    /// <summary>As it lies, its front towards one.</summary>
    None,

    /// <summary>Over its front: its underside up, its back towards one.</summary>
    Over,

    /// <summary>Over its right side: its underside up, its left side to the right.</summary>
    Across,
}
