namespace CushionService.Engine.Instructions;

/// <summary>Where a loose filling is packed first, since it cannot be reached later.</summary>
internal enum FirstFilled
{
    /// <summary>The corners of the outline.</summary>
    Corners,

    /// <summary>The ends of a roll.</summary>
    Ends,

    /// <summary>The edge all round.</summary>
    Edge,
}
