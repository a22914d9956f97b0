using System.Collections.Immutable;
using System.Reflection;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using CushionService.Wording;

namespace CushionService.Widget;

/// <summary>The element <c>cushion-estimate</c> as one ES module: its parts, each after what it imports, without comments and
/// indents.</summary>
internal sealed partial class WidgetModule
{
    private const string Root = "cushion-estimate.js";
    private const int DigestInVersion = 8;

    private WidgetModule(string text)
    {
        Bytes = Encoding.UTF8.GetBytes(text).ToImmutableArray();
        Version = $"{EngineVersion.Current}-{Convert.ToHexStringLower(SHA256.HashData(Bytes.AsSpan()))[..DigestInVersion]}";
        Integrity = "sha384-" + Convert.ToBase64String(SHA384.HashData(Bytes.AsSpan()));
    }

    /// <summary>The module that this build serves.</summary>
    public static WidgetModule Current { get; } = new(Joined());

    /// <summary>The engine's version and the module's digest, so that an address never changes its content.</summary>
    public string Version { get; }

    /// <summary>Its digest, as a page's integrity attribute takes it (W3C Subresource Integrity).</summary>
    public string Integrity { get; }

    /// <summary>Where it is served.</summary>
    public string Path => $"/widget/{Version}/{Root}";

    /// <summary>Its text in UTF-8.</summary>
    public ImmutableArray<byte> Bytes { get; }

    private static string Joined()
    {
        var text = new StringBuilder();
        Append(Root, [], text);
        return text.ToString();
    }

    private static void Append(string part, HashSet<string> done, StringBuilder text)
    {
        if (!done.Add(part))
        {
            return;
        }

        string source = Read(part);
        foreach (Match import in Import().Matches(source))
        {
            Append(import.Groups["part"].Value, done, text);
        }

        foreach (
            string line in Comment()
                .Replace(Import().Replace(source, ""), "")
                .Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
        )
        {
            text.Append(part != Root && line.StartsWith("export ", StringComparison.Ordinal) ? line["export ".Length..] : line)
                .Append(line[^1] is ',' or '(' or '[' or '{' ? "" : "\n"); // Nothing ends there, so no line has to.
        }
    }

    private static string Read(string part)
    {
        using Stream stream =
            Assembly.GetExecutingAssembly().GetManifestResourceStream($"Widget/{part}")
            ?? throw new InvalidOperationException($"The widget has no part {part}.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    [GeneratedRegex("""^import \{[^}]*\} from "\./(?<part>[\w-]+\.js)";$""", RegexOptions.Multiline)]
    private static partial Regex Import();

    // Comments of whole lines only: what is behind code, or in a string, is left alone.
    [GeneratedRegex(@"^\s*(//.*|/\*\*(.|\n)*?\*/\s*)$", RegexOptions.Multiline)]
    private static partial Regex Comment();
}
