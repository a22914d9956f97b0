using System.Diagnostics.CodeAnalysis;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Diagnostics;

namespace CushionService.Engine.Tests.Messages;

/// <summary>The properties of a project in the folder /src whose namespace is Trade.</summary>
internal sealed class GivenOptions : AnalyzerConfigOptionsProvider
{
    public override AnalyzerConfigOptions GlobalOptions { get; } = new Properties();

    public override AnalyzerConfigOptions GetOptions(SyntaxTree tree) => GlobalOptions;

    public override AnalyzerConfigOptions GetOptions(AdditionalText textFile) => GlobalOptions;

    private sealed class Properties : AnalyzerConfigOptions
    {
        public override bool TryGetValue(string key, [NotNullWhen(true)] out string? value)
        {
            value = key switch
            {
                "build_property.RootNamespace" => "Trade",
                "build_property.ProjectDir" => "/src/",
                _ => null,
            };
            return value is not null;
        }
    }
}
