using System.Diagnostics.Metrics;

namespace CushionService.Metrics;

/// <summary>What the service counts of its own work.</summary>
internal static class ServiceMeter
{
    /// <summary>The name of the service's meter.</summary>
    public const string Name = "CushionService";

    /// <summary>The meter.</summary>
    public static Meter Meter { get; } = new(Name);
}
