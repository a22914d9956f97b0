namespace CushionService.Engine.Specifications;

/// <summary>The id of the cloth of each part.</summary>
/// <param name="Top">The top face's.</param>
/// <param name="Bottom">The bottom face's.</param>
/// <param name="Sides">Every side panel's.</param>
/// <param name="Handle">The handle's.</param>
public sealed record FabricRoles(string Top, string Bottom, string Sides, string Handle)
{
    /// <summary>The inner cover's; null for a cushion without one.</summary>
    public string? InnerCover { get; init; }

    /// <summary>The cloth of a part.</summary>
    public string this[FabricRole role] => role switch
    {
        FabricRole.Top => Top,
        FabricRole.Bottom => Bottom,
        FabricRole.Sides => Sides,
        FabricRole.Handle => Handle,
        FabricRole.InnerCover when InnerCover is { } inner => inner,
        _ => throw new ArgumentOutOfRangeException(nameof(role)),
    };
}
