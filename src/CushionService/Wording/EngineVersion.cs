using System.Reflection;

namespace CushionService.Wording;

/// <summary>The version that answers name, so that a repeated quote can be told to come from the same engine.</summary>
internal static class EngineVersion
{
    public static string Current { get; } =
        typeof(Engine.Quoting.Quote).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion.Split('+')[
            0
        ];
}
