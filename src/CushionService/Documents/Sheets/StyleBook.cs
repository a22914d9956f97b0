using System.Text;

namespace CushionService.Documents.Sheets;

/// <summary>The rules that elements of a document need for themselves, as classes: pages that show it may forbid styles on
/// elements.</summary>
internal sealed class StyleBook
{
    private readonly Dictionary<string, string> _classes = [];

    /// <summary>The class of elements that have a rule.</summary>
    /// <param name="rule">A declaration of CSS made of our own words and numbers.</param>
    public string ClassOf(string rule)
    {
        if (!_classes.TryGetValue(rule, out string? name))
        {
            _classes[rule] = name = FormattableString.Invariant($"s{_classes.Count + 1}");
        }

        return name;
    }

    /// <summary>The rules of all classes.</summary>
    public override string ToString()
    {
        var rules = new StringBuilder();
        foreach ((string rule, string name) in _classes)
        {
            rules.Append('.').Append(name).Append(" { ").Append(rule).Append(" }\n");
        }

        return rules.ToString();
    }
}
