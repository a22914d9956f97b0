namespace CushionService.Contract.Answers;

/// <summary>The sizes of one piece of a material, in the order's units.</summary>
public sealed record MaterialSizeAnswer
{
    /// <summary>Width of a sheet, a roll, a tape or a block; diameter of a button.</summary>
    public double? Width { get; init; }

    /// <summary>Depth of a sheet or a block.</summary>
    public double? Depth { get; init; }

    /// <summary>Thickness of a sheet, a block or batting; diameter of a cord.</summary>
    public double? Thickness { get; init; }
}
