namespace CushionService.MessageGenerator;

/// <summary>A type that a comment may declare for an argument, and what the code passes for it.</summary>
internal sealed class ArgumentType(string code, string factory = "Of")
{
    private const string Engine = "global::CushionService.Engine.";

    // Mark and run are lengths as well: they are printed by other rules (a mark to the fraction of a tape, a run also in
    // yards or metres).
    private static readonly Dictionary<string, ArgumentType> Known = new()
    {
        ["length"] = new(Engine + "Measures.Length"),
        ["area"] = new(Engine + "Measures.Area"),
        ["mark"] = new(Engine + "Measures.Length", "Mark"),
        ["run"] = new(Engine + "Measures.Length", "Run"),
        ["volume"] = new(Engine + "Measures.Volume"),
        ["mass"] = new(Engine + "Measures.Mass"),
        ["force"] = new(Engine + "Measures.Force"),
        ["money"] = new(Engine + "Measures.Money"),
        ["sale"] = new(Engine + "Measures.SaleAmount"),
        ["percent"] = new(Engine + "Measures.Fraction", "Percent"),
        ["number"] = new("decimal"),
        ["count"] = new("long"),
        ["flag"] = new("bool"),
        ["edge"] = new(Engine + "Geometry.EdgeName", "Name"),
        ["part"] = new(Engine + "Patterns.Panels.PartName", "Name"),
        ["piece"] = new(Engine + "Cutting.PieceName", "Name"),
        ["id"] = new("string", "Id"),
        ["item"] = new("string", "Item"),
        ["field"] = new("string", "Field"),
        ["message"] = new(Engine + "Messages.Message"),
    };

    /// <summary>The C# type.</summary>
    public string Code => code;

    /// <summary>The function of <c>MessageArgument</c> that takes it.</summary>
    public string Factory => factory;

    /// <summary>The type of a word of the comment; <c>word</c> is followed by the name of an
    /// enumeration, as <c>Engine.Specifications.Outlines.Side</c>.</summary>
    /// <exception cref="MessageException">There is no such type.</exception>
    /// <param name="name">The declared type, without the signs for a list or for what may be absent.</param>
    public static ArgumentType Of(string name)
    {
        if (name.StartsWith("word ", System.StringComparison.Ordinal))
        {
            return new($"global::CushionService.{name.Substring("word ".Length).Trim()}", "Word");
        }

        return Known.TryGetValue(name, out ArgumentType? type)
            ? type
            : throw new MessageException(
                $"'{name}' is no type; the types are {string.Join(", ", Known.Keys)}, and word with an enumeration"
            );
    }
}
