using System.Text.RegularExpressions;
using System.Xml;
using System.Xml.Linq;

namespace CushionService.MessageGenerator;

/// <summary>A resource file: <c>StepTexts.resx</c> is the English one of its area, <c>StepTexts.de.resx</c> a translation.</summary>
/// <param name="path">Its path, which gives area and language.</param>
/// <param name="text">Its content.</param>
internal sealed class ResxFile(string path, string text)
{
    private static readonly Regex LineBreak = new(@"\s*\n\s*", RegexOptions.CultureInvariant);

    /// <summary>The path, for reports.</summary>
    public string Path => path;

    /// <summary>The area: the file's name before the first dot.</summary>
    public string Area { get; } = System.IO.Path.GetFileName(path).Split('.')[0];

    /// <summary>The code of the language; empty for English.</summary>
    public string Language { get; } = System.IO.Path.GetFileName(path).Split('.') is { Length: > 2 } parts ? parts[1] : "";

    /// <summary>Folder and area, which a file and its translations have in common.</summary>
    public string Group => System.IO.Path.Combine(System.IO.Path.GetDirectoryName(path) ?? "", Area);

    /// <summary>The entries in their order. A value may be written on several lines; a line break and the space round it are one
    /// space.</summary>
    /// <exception cref="XmlException">The file is not XML.</exception>
    public IReadOnlyList<ResxEntry> Entries() =>
        [
            .. XDocument
                .Load(new StringReader(text), LoadOptions.SetLineInfo | LoadOptions.PreserveWhitespace)
                .Root!.Elements("data")
                .Select(data => new ResxEntry(
                    (string?)data.Attribute("name") ?? "",
                    OneLine(data.Element("value")),
                    OneLine(data.Element("comment")),
                    ((IXmlLineInfo)data).LineNumber - 1
                )),
        ];

    private static string OneLine(XElement? element) => LineBreak.Replace(element?.Value ?? "", " ").Trim();
}
