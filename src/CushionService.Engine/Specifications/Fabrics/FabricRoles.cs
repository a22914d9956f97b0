namespace CushionService.Engine.Specifications.Fabrics;

/// <summary>The id of the fabric of each part.</summary>
/// <param name="Top">The top face's.</param>
/// <param name="Bottom">The bottom face's.</param>
/// <param name="Sides">Every side panel's.</param>
/// <param name="Handle">The handle's.</param>
public sealed record FabricRoles(string Top, string Bottom, string Sides, string Handle)
{
    /// <summary>The edging's; the top face's unless told otherwise.</summary>
    public string Edging { get; init; } = Top;

    /// <summary>The ties'; the top face's unless told otherwise.</summary>
    public string Ties { get; init; } = Top;

    /// <summary>The straps'; the bottom face's unless told otherwise.</summary>
    public string Straps { get; init; } = Bottom;

    /// <summary>The pocket's; the sides' unless told otherwise.</summary>
    public string Pocket { get; init; } = Sides;

    /// <summary>The inner cover's; null for a cushion without one.</summary>
    public string? InnerCover { get; init; }

    /// <summary>The fabrics of the shell.</summary>
    public IEnumerable<string> Shell => [Top, Bottom, Sides];

    /// <summary>The fabric of a part.</summary>
    public string this[FabricRole role] =>
        role switch
        {
            FabricRole.Top => Top,
            FabricRole.Bottom => Bottom,
            FabricRole.Sides => Sides,
            FabricRole.Handle => Handle,
            FabricRole.Edging => Edging,
            FabricRole.Ties => Ties,
            FabricRole.Straps => Straps,
            FabricRole.Pocket => Pocket,
            FabricRole.Buttons => Top,
            FabricRole.InnerCover when InnerCover is { } inner => inner,
            _ => throw new ArgumentOutOfRangeException(nameof(role)),
        };
}
