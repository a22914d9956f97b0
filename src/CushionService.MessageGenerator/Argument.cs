using System.Text.RegularExpressions;

namespace CushionService.MessageGenerator;

/// <summary>An argument that the comment of a message declares: <c>run: part[]</c>, <c>depth: length?</c>.</summary>
internal sealed class Argument
{
    private static readonly Regex Form = new(
        @"^(?<name>[a-z][A-Za-z0-9]*)\s*:\s*(?<type>[a-z]+( [A-Za-z][A-Za-z0-9_.]*)?)(?<more>\[\]|\?)?$",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture
    );

    private readonly ArgumentType _type;

    private Argument(Match match)
    {
        Name = match.Groups["name"].Value;
        TypeName = match.Groups["type"].Value.Split(' ')[0];
        _type = ArgumentType.Of(match.Groups["type"].Value);
        IsList = match.Groups["more"].Value == "[]";
        IsOptional = match.Groups["more"].Value == "?";
    }

    /// <summary>Its name, as the template and the function's parameter have it; it may be a keyword of C#.</summary>
    public string Name { get; }

    /// <summary>The first word of its type: <c>length</c>, <c>word</c>.</summary>
    public string TypeName { get; }

    /// <summary>Its C# type, or that of its entries.</summary>
    public string Code => _type.Code;

    /// <summary>Whether it is a list of such values.</summary>
    public bool IsList { get; }

    /// <summary>Whether the code may pass null.</summary>
    public bool IsOptional { get; }

    /// <summary>The parameter of the function.</summary>
    /// <remarks>With an at sign, so that a message may name an argument <c>base</c> or <c>long</c>.</remarks>
    public string Parameter => $"{ParameterType} @{Name}";

    /// <summary>What makes an argument of the parameter.</summary>
    public string Value =>
        IsList ? $"MessageArgument.List(@{Name}, static one => MessageArgument.{_type.Factory}(one))"
        : !IsOptional ? $"MessageArgument.{_type.Factory}(@{Name})"
        : $"@{Name} is {{ }} given{Name} ? MessageArgument.{_type.Factory}(given{Name}) : default";

    private string ParameterType =>
        IsList ? $"global::System.Collections.Generic.IEnumerable<{_type.Code}>"
        : IsOptional ? _type.Code + "?"
        : _type.Code;

    /// <summary>The arguments of a comment, with a semicolon between them.</summary>
    /// <exception cref="MessageException">A declaration is not of the form, its type is unknown, or two have one name.</exception>
    /// <param name="comment">The comment of an entry; empty for a message without arguments.</param>
    public static IReadOnlyList<Argument> In(string comment)
    {
        var arguments = new List<Argument>();
        foreach (string declaration in comment.Split(';').Select(part => part.Trim()).Where(part => part.Length > 0))
        {
            Match match = Form.Match(declaration);
            if (!match.Success)
            {
                throw new MessageException($"'{declaration}' must be a name, a colon and a type, as 'run: part[]' or 'depth: length?'");
            }

            var argument = new Argument(match);
            if (arguments.Any(other => other.Name == argument.Name))
            {
                throw new MessageException($"the argument '{argument.Name}' is declared twice");
            }

            arguments.Add(argument);
        }

        return arguments;
    }
}
