namespace CushionService.Contract.Answers;

/// <summary>Which sizes of a cushion's outline are free to change.</summary>
public enum FreeSize
{
    /// <summary>All, in proportion.</summary>
    Both,

    /// <summary>The width alone.</summary>
    Width,

    /// <summary>The depth alone.</summary>
    Depth,
}
