using System.Text;
using Microsoft.CodeAnalysis.CSharp;

namespace CushionService.MessageGenerator;

/// <summary>Reads a template and writes the C# expression of its parts.</summary>
/// <remarks>The grammar is a subset of ICU MessageFormat's: <c>{name}</c>, <c>{name, plural, =0 {..} one {..} other {..}}</c> with
/// <c>#</c> for the number, <c>{name, select, word {..} other {..}}</c>; an apostrophe before a brace or <c>#</c> quotes up to the next one.
/// One form is of our own: <c>{name, list, and}</c> and <c>{name, list, or}</c>, a list with that word before its last.</remarks>
internal sealed class TemplateReader
{
    private static readonly string[] Categories = ["zero", "one", "two", "few", "many", "other"];

    private readonly string _text;
    private readonly IReadOnlyList<Argument> _arguments;
    private readonly HashSet<string> _present = [];
    private readonly HashSet<string> _used = [];
    private readonly HashSet<string> _members = [];
    private int _at;

    private TemplateReader(string text, IReadOnlyList<Argument> arguments) => (_text, _arguments) = (text, arguments);

    /// <summary>The expression of a template's parts.</summary>
    /// <param name="text">The template.</param>
    /// <param name="arguments">What it may name.</param>
    /// <param name="usesAll">Whether it must name every one.</param>
    /// <param name="members">Takes the members of enumerations whose words are cases; the compiler finds those that do not exist.</param>
    /// <exception cref="MessageException">The template is broken.</exception>
    public static string Read(string text, IReadOnlyList<Argument> arguments, bool usesAll, ISet<string> members)
    {
        if (text.Length == 0)
        {
            throw new MessageException("the template is empty");
        }

        var reader = new TemplateReader(text, arguments);
        string parts = reader.Parts(counted: -1, isCase: false);
        members.UnionWith(reader._members);
        return usesAll && arguments.FirstOrDefault(argument => !reader._used.Contains(argument.Name)) is { } unused
            ? throw new MessageException($"the argument '{unused.Name}' is declared and not used")
            : parts;
    }

    // Up to the end, or to the brace that ends a case.
    private string Parts(int counted, bool isCase)
    {
        var parts = new List<string>();
        var literal = new StringBuilder();
        while (_at < _text.Length && _text[_at] != '}')
        {
            char sign = _text[_at++];
            if (sign == '\'' && _at < _text.Length && _text[_at] is '{' or '}' or '#' or '\'')
            {
                Quoted(literal);
            }
            else if (sign == '{')
            {
                EndLiteral();
                parts.Add(Placeholder(counted));
            }
            else if (sign == '#' && counted >= 0)
            {
                EndLiteral();
                parts.Add($"MessagePart.Value({counted})");
            }
            else
            {
                literal.Append(sign);
            }
        }

        if (_at < _text.Length != isCase)
        {
            throw new MessageException(isCase ? "a brace is opened and not closed" : $"a brace is closed and not opened, at {_at + 1}");
        }

        EndLiteral();
        return $"[{string.Join(", ", parts)}]";

        void EndLiteral()
        {
            if (literal.Length > 0)
            {
                parts.Add($"MessagePart.Text({SymbolDisplay.FormatLiteral(literal.ToString(), quote: true)})");
                literal.Clear();
            }
        }
    }

    // Two apostrophes are one; one before a sign of the grammar quotes up to the next.
    private void Quoted(StringBuilder literal)
    {
        if (_text[_at] == '\'')
        {
            literal.Append('\'');
            _at++;
            return;
        }

        int end = _text.IndexOf('\'', _at);
        if (end < 0)
        {
            throw new MessageException("an apostrophe before a brace or # begins a quotation that does not end");
        }

        literal.Append(_text, _at, end - _at);
        _at = end + 1;
    }

    private string Placeholder(int counted)
    {
        string name = Word(',', '}');
        int index = -1;
        for (var i = 0; i < _arguments.Count; i++)
        {
            index = _arguments[i].Name == name ? i : index;
        }

        if (index < 0)
        {
            throw new MessageException($"'{{{name}}}' is not declared in the comment");
        }

        Argument argument = _arguments[index];
        _used.Add(name);
        if (Next() == '}')
        {
            return Plain(argument, index);
        }

        string format = Word(',', '}');
        if (Next() == '}')
        {
            throw new MessageException($"'{format}' of '{{{name}}}' lacks its cases");
        }

        return format switch
        {
            "plural" => Plural(argument, index),
            "select" => Select(argument, index, counted),
            "list" => List(argument, index),
            _ => throw new MessageException($"'{format}' of '{{{name}}}' must be plural, select or list"),
        };
    }

    private string Plain(Argument argument, int index)
    {
        if (argument.TypeName == "flag")
        {
            throw new MessageException($"the flag '{argument.Name}' can be selected by and not be printed");
        }

        if (argument.IsOptional && !_present.Contains(argument.Name))
        {
            throw new MessageException(
                $"'{argument.Name}' may be absent: print it in the other case of {{{argument.Name}, select, none {{..}} ..}}"
            );
        }

        return $"MessagePart.Value({index})";
    }

    private string Plural(Argument argument, int index)
    {
        if (argument.TypeName != "count" || argument.IsList || (argument.IsOptional && !_present.Contains(argument.Name)))
        {
            throw new MessageException($"a plural needs a count; '{argument.Name}' is none, or may be absent");
        }

        return $"MessagePart.Plural({index}, {Cases(argument, index, IsCategory)})";
    }

    private string Select(Argument argument, int index, int counted)
    {
        Func<string, bool> allowed =
            argument.TypeName == "flag" ? key => key is "true" or "false" or "other"
            : argument.TypeName == "word" && !argument.IsList ? key => key != "none" || argument.IsOptional
            : argument.IsOptional || argument.IsList ? key => key is "none" or "other"
            : throw new MessageException($"'{argument.Name}' cannot be selected by: it is no word, no flag, and never absent");
        return $"MessagePart.Select({index}, {Cases(argument, counted, allowed)})";
    }

    private string List(Argument argument, int index)
    {
        string word = Word('}');
        _at++;
        return argument.IsList && word is "and" or "or"
            ? $"MessagePart.List({index}, {(word == "and" ? "Conjunction.And" : "Conjunction.Or")})"
            : throw new MessageException($"'{argument.Name}, list' needs a list, and one of: and, or");
    }

    private string Cases(Argument argument, int counted, Func<string, bool> allowed)
    {
        var cases = new Dictionary<string, string>();
        while (true)
        {
            SkipSpace();
            if (_at < _text.Length && _text[_at] == '}')
            {
                _at++;
                break;
            }

            string key = Word('{');
            if (!allowed(key) || cases.ContainsKey(key))
            {
                throw new MessageException($"'{key}' is no case of '{argument.Name}', or is there twice");
            }

            _at++;
            if (argument.TypeName == "word" && key is not ("none" or "other"))
            {
                _members.Add($"{argument.Code}.{MessageClass.Pascal(key)}");
            }

            bool isNew = key != "none" && argument.IsOptional && _present.Add(argument.Name);
            string parts = Parts(counted, isCase: true);
            if (isNew)
            {
                _present.Remove(argument.Name);
            }

            _at++;
            cases.Add(key, $"new({SymbolDisplay.FormatLiteral(key, quote: true)}, {parts})");
        }

        return cases.ContainsKey("other")
            ? $"[{string.Join(", ", cases.Values)}]"
            : throw new MessageException($"'{argument.Name}' lacks the case other");
    }

    private static bool IsCategory(string key) =>
        Categories.Contains(key) || (key.Length is > 1 and < 10 && key[0] == '=' && key.Skip(1).All(sign => sign is >= '0' and <= '9'));

    // The text up to one of the signs, which is not consumed.
    private string Word(params char[] ends)
    {
        int end = _text.IndexOfAny(ends, _at);
        if (end < 0)
        {
            throw new MessageException("a brace is opened and not closed");
        }

        string word = _text.Substring(_at, end - _at).Trim();
        _at = end;
        return word;
    }

    private char Next() => _text[_at++];

    private void SkipSpace()
    {
        while (_at < _text.Length && char.IsWhiteSpace(_text[_at]))
        {
            _at++;
        }
    }
}
