using System.Diagnostics.Metrics;

namespace CushionService.Metrics;

/// <summary>The meter of the service's own instruments. They are listed on the operations page, which a test keeps
/// complete.</summary>
internal static class ServiceMeter
{
    /// <summary>The name of the service's meter.</summary>
    public const string Name = "CushionService";

    /// <summary>The meter, one for the process.</summary>
    public static Meter Meter { get; } = new(Name);
}
