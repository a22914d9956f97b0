using System.Collections.Immutable;
using System.Text;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Text;

namespace CushionService.MessageGenerator;

/// <summary>Makes a class of every resource file of messages. A broken message is an error of the build, at its place in the
/// file.</summary>
[Generator]
public sealed class MessageGenerator : IIncrementalGenerator
{
    private static readonly DiagnosticDescriptor Broken = new(
        "CSM001",
        "A message is broken",
        "{0}: {1}: {2}",
        "Messages",
        DiagnosticSeverity.Error,
        isEnabledByDefault: true
    );

    /// <inheritdoc />
    public void Initialize(IncrementalGeneratorInitializationContext context)
    {
        // Values that compare equal end the run here, so that typing in C# files makes no message anew.
        IncrementalValueProvider<(string Space, string Folder)> project = context.AnalyzerConfigOptionsProvider.Select(
            (options, _) => (Option(options.GlobalOptions, "RootNamespace"), Option(options.GlobalOptions, "ProjectDir"))
        );
        IncrementalValueProvider<ImmutableArray<(string Path, string Text)>> files = context
            .AdditionalTextsProvider.Where(file => file.Path.EndsWith(".resx", StringComparison.OrdinalIgnoreCase))
            .Select((file, cancellation) => (file.Path, file.GetText(cancellation)?.ToString() ?? ""))
            .Collect();
        context.RegisterSourceOutput(files.Combine(project), (output, both) => Write(output, both.Left, both.Right));
    }

    private static void Write(
        SourceProductionContext output,
        ImmutableArray<(string Path, string Text)> files,
        (string Space, string Folder) project
    )
    {
        foreach (IGrouping<string, ResxFile> area in files.Select(file => new ResxFile(file.Path, file.Text)).GroupBy(file => file.Group))
        {
            if (area.FirstOrDefault(file => file.Language.Length == 0) is not { } english)
            {
                Report(area.First(), 0, "", "the area has no English file");
                continue;
            }

            string space = SpaceOf(english.Path, project);
            string source = new MessageClass(english, [.. area.Where(file => file != english)], Report).Source(space);
            output.AddSource($"{space}.{english.Area}.g.cs", SourceText.From(source, Encoding.UTF8));
        }

        void Report(ResxFile file, int line, string key, string reason)
        {
            var start = new LinePosition(line, 0);
            Location place = Location.Create(file.Path, new TextSpan(0, 0), new LinePositionSpan(start, start));
            output.ReportDiagnostic(Diagnostic.Create(Broken, place, Path.GetFileName(file.Path), key, reason));
        }
    }

    // The namespace of the folder that the file lies in.
    private static string SpaceOf(string path, (string Space, string Folder) project)
    {
        string folder = Path.GetDirectoryName(path) ?? "";
        string within = folder.StartsWith(project.Folder.TrimEnd('/', '\\'), StringComparison.Ordinal)
            ? folder.Substring(project.Folder.TrimEnd('/', '\\').Length)
            : "";
        return string.Join(".", within.Split(['/', '\\'], StringSplitOptions.RemoveEmptyEntries).Prepend(project.Space));
    }

    private static string Option(Microsoft.CodeAnalysis.Diagnostics.AnalyzerConfigOptions options, string name) =>
        options.TryGetValue($"build_property.{name}", out string? value) ? value : "";
}
