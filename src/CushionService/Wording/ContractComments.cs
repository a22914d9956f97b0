using System.Reflection;
using System.Xml.Linq;

namespace CushionService.Wording;

/// <summary>The summaries of the contract's properties, from the documentation file that is built beside the host.</summary>
internal sealed class ContractComments
{
    private readonly Dictionary<string, string> _summaries = XDocument
        .Load(Path.ChangeExtension(typeof(ContractComments).Assembly.Location, ".xml"))
        .Descendants("member")
        .ToDictionary(member => (string)member.Attribute("name")!, member => Plain(member.Element("summary")));

    /// <summary>The summary of a property as plain text, in one line; empty where it has none.</summary>
    public string Of(PropertyInfo property) => _summaries.GetValueOrDefault($"P:{property.DeclaringType!.FullName}.{property.Name}", "");

    private static string Plain(XElement? summary) =>
        summary is null
            ? ""
            : string.Join(
                ' ',
                string.Concat(
                        summary
                            .Nodes()
                            .Select(node =>
                                // An empty element is a reference: its last name is what a reader of the text knows.
                                node is XElement { IsEmpty: true } reference
                                    ? ((string?)reference.Attribute("cref") ?? "").Split('.')[^1]
                                : node is XElement element ? element.Value
                                : node.ToString()
                            )
                    )
                    .Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)
            );
}
