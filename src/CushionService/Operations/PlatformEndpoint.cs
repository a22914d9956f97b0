namespace CushionService.Operations;

/// <summary>Marks what is for the platform alone: health and metrics.</summary>
internal sealed class PlatformEndpoint
{
    /// <summary>The mark.</summary>
    public static PlatformEndpoint Mark { get; } = new();
}
