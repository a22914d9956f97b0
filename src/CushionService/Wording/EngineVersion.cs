using System.Reflection;

namespace CushionService.Wording;

/// <summary>The version that answers name, so that a repeated quote can be told to come from the same engine.</summary>
internal static class EngineVersion
{
    /// <summary>The engine's version, such as 1.0.0, without the commit that the build appends after a plus
    /// sign.</summary>
    public static string Current { get; } =
        typeof(Engine.Quoting.Quote).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion.Split('+')[
            0
        ];
}
