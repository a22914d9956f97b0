using System.Collections.Immutable;
using System.Reflection;
using System.Security.Cryptography;
using System.Text;
using CushionService.Wording;

namespace CushionService.Widget;

/// <summary>The element <c>cushion-estimate</c> as the files that a page loads: the module of the first answer, the module of the rest,
/// and the words of other languages. Beside them all in one module, for bundlers.</summary>
internal sealed class WidgetModule
{
    /// <summary>The module that a page names.</summary>
    public const string Main = "cushion-estimate.js";

    /// <summary>The same and all that it loads, in one module.</summary>
    public const string Whole = "cushion-estimate.whole.js";

    private const string Later = "later.js";
    private const string WordsFolder = "words/";
    private const string JavaScript = "text/javascript; charset=utf-8";
    private const int DigestInVersion = 8;

    private WidgetModule()
    {
        WidgetParts parts = new();
        string main = parts.Join(Main),
            later = parts.Join(Later),
            tools = string.Join(',', parts.Tools);
        string give = $"function tools() {{ return {{{tools}}}; }}\n",
            rest = $"({{{tools}}}) => {{\n{later}return PARTS;\n}}";
        string[] languages =
        [
            .. Names().Where(name => name.StartsWith(WordsFolder, StringComparison.Ordinal)).Order(StringComparer.Ordinal),
        ];
        string words = string.Join(",", languages.Select(name => $"{name[WordsFolder.Length..^".json".Length]}: {WidgetParts.Read(name)}"));
        string within = $"const WITHIN = {{ parts: {rest}, words: {{{words}}} }};";
        Files = new[]
        {
            (Main, JavaScript, main + give),
            (Later, JavaScript, $"export const parts = {rest};\n"),
            (Whole, JavaScript, (main + give).Replace("const WITHIN = {};", within, StringComparison.Ordinal)),
        }
            .Concat(languages.Select(name => (name, "application/json; charset=utf-8", WidgetParts.Read(name))))
            .Select(file => new WidgetFile(file.Item1, file.Item2, Encoding.UTF8.GetBytes(file.Item3).ToImmutableArray()))
            .ToImmutableArray();
        using IncrementalHash all = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (WidgetFile file in Files)
        {
            all.AppendData(file.Bytes.AsSpan());
        }

        Version = $"{EngineVersion.Current}-{Convert.ToHexStringLower(all.GetHashAndReset())[..DigestInVersion]}";
        Integrity = "sha384-" + Convert.ToBase64String(SHA384.HashData(Bytes.AsSpan()));
    }

    /// <summary>The build that this service serves.</summary>
    public static WidgetModule Current { get; } = new();

    /// <summary>The engine's version and the digest of all files, so that an address never changes its content.</summary>
    public string Version { get; }

    /// <summary>The digest of the module that a page names, as its integrity attribute takes it (W3C Subresource Integrity).</summary>
    public string Integrity { get; }

    /// <summary>Where this build is served for good.</summary>
    public string Path => $"/widget/{Version}/{Main}";

    /// <summary>All files; the first is the module that a page names.</summary>
    public ImmutableArray<WidgetFile> Files { get; }

    /// <summary>The module that a page names, in UTF-8.</summary>
    public ImmutableArray<byte> Bytes => Files[0].Bytes;

    private static IEnumerable<string> Names() =>
        Assembly
            .GetExecutingAssembly()
            .GetManifestResourceNames()
            .Where(name => name.StartsWith(WidgetParts.Folder, StringComparison.Ordinal))
            .Select(name => name[WidgetParts.Folder.Length..]);
}
