using System.Reflection;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace CushionService.Widget;

/// <summary>Joins the parts of the widget into modules: each part after what it imports, without comments and indents. A part is in one
/// module only; what a later module uses of an earlier one is noted.</summary>
internal sealed partial class WidgetParts
{
    /// <summary>Where the parts are among the resources of the assembly.</summary>
    public const string Folder = "Widget/";

    private readonly HashSet<string> _earlier = [];
    private readonly SortedSet<string> _tools = new(StringComparer.Ordinal);

    /// <summary>What the modules joined so far use of those before them.</summary>
    public IReadOnlyCollection<string> Tools => _tools;

    /// <summary>A module of a part and all that it imports, less what earlier modules have.</summary>
    /// <param name="root">The part.</param>
    public string Join(string root)
    {
        StringBuilder text = new();
        HashSet<string> own = [];
        Append(root, root, own, text);
        _earlier.UnionWith(own);
        return text.ToString();
    }

    /// <summary>The text of a part.</summary>
    /// <exception cref="InvalidOperationException">There is no such part.</exception>
    public static string Read(string part)
    {
        if (WidgetCatalogue.Part(part) is { } made)
        {
            return made;
        }

        using Stream stream =
            Assembly.GetExecutingAssembly().GetManifestResourceStream(Folder + part)
            ?? throw new InvalidOperationException($"The widget has no part {part}.");
        using StreamReader reader = new(stream);
        return reader.ReadToEnd();
    }

    /// <summary>The words of a language other than English.</summary>
    /// <param name="tag">Its tag.</param>
    public static Dictionary<string, string> Words(string tag) =>
        JsonSerializer.Deserialize<Dictionary<string, string>>(Read($"words/{tag}.json"))!;

    private void Append(string part, string root, HashSet<string> own, StringBuilder text)
    {
        if (!own.Add(part))
        {
            return;
        }

        string source = Read(part);
        foreach (Match import in Import().Matches(source))
        {
            string from = import.Groups["part"].Value;
            if (_earlier.Contains(from))
            {
                _tools.UnionWith(
                    import.Groups["names"].Value.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
                );
            }
            else
            {
                Append(from, root, own, text);
            }
        }

        foreach (
            string line in Comment()
                .Replace(Import().Replace(source, ""), "")
                .Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
        )
        {
            string written = part != root && line.StartsWith("export ", StringComparison.Ordinal) ? line["export ".Length..] : line;
            // Nothing ends behind these signs, so no line has to.
            text.Append(Tight(written, part)).Append(line[^1] is ',' or '(' or '[' or '{' ? "" : "\n");
        }
    }

    // No spaces are needed around signs. A line of code that may hold text or a pattern keeps them.
    private static string Tight(string line, string part) =>
        part.StartsWith("style", StringComparison.Ordinal)
            ? line.Contains('{') && !line.Contains('`')
                ? Spaces().Replace(line, "$1")
                : line
            : line.AsSpan().ContainsAny("\"'`/")
                ? line
                : Signs().Replace(line, "$1");

    [GeneratedRegex("""^import \{(?<names>[^}]*)\} from "\./(?<part>[\w-]+\.js)";$""", RegexOptions.Multiline)]
    private static partial Regex Import();

    // Comments of whole lines only: what is behind code, or in a string, is left alone.
    [GeneratedRegex(@"^\s*(//.*|/\*\*(.|\n)*?\*/\s*)$", RegexOptions.Multiline)]
    private static partial Regex Comment();

    [GeneratedRegex(@" ?([=(){},;:?&|<>]+) ?")]
    private static partial Regex Signs();

    [GeneratedRegex(@"(?<=[\w)%\]])\s*([{}:;])\s+|(?<=[{};])\s+")]
    private static partial Regex Spaces();
}
