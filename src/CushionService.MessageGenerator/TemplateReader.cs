using System.Text;
using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis.CSharp;

namespace CushionService.MessageGenerator;

/// <summary>Reads a template and writes the C# expression of its parts.</summary>
/// <remarks>The grammar is a subset of ICU MessageFormat's: <c>{name}</c>, <c>{name, plural, =0 {..} one {..} other {..}}</c> with
/// <c>#</c> for the number, <c>{name, select, word {..} other {..}}</c>; an apostrophe before a brace or <c>#</c> quotes up to the next
/// one. One form is of our own: <c>{name, list, and}</c> and <c>{name, list, or}</c>, a list with that word before its last, and
/// <c>{name, list, sum}</c> and <c>{name, list, semicolon}</c>, a list with that sign between all.</remarks>
internal sealed class TemplateReader
{
    private static readonly Regex Count = new("^(=[0-9]{1,9}|one|many|other)$", RegexOptions.CultureInvariant);

    private readonly TemplateText _text;
    private readonly IReadOnlyList<Argument> _arguments;

    // Arguments that are known not to be absent within the case that is being read.
    private readonly HashSet<string> _present = [];
    private readonly HashSet<string> _used = [];
    private readonly ISet<string> _members;

    private TemplateReader(string text, IReadOnlyList<Argument> arguments, ISet<string> members) =>
        (_text, _arguments, _members) = (new TemplateText(text), arguments, members);

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

        var reader = new TemplateReader(text, arguments, members);
        string parts = reader.Parts(counted: -1, isCase: false);
        return usesAll && arguments.FirstOrDefault(argument => !reader._used.Contains(argument.Name)) is { } unused
            ? throw new MessageException($"the argument '{unused.Name}' is declared and not used")
            : parts;
    }

    // Up to the end, or to the brace that ends a case. Counted is the argument that # writes, -1 outside a plural.
    private string Parts(int counted, bool isCase)
    {
        var parts = new List<string>();
        var literal = new StringBuilder();
        while (_text.Ahead is not ('}' or '\0'))
        {
            char sign = _text.Next();
            if (sign == '\'' && _text.Ahead is '{' or '}' or '#' or '\'')
            {
                literal.Append(_text.Quoted());
            }
            else if (sign == '{' || (sign == '#' && counted >= 0))
            {
                EndLiteral();
                parts.Add(sign == '{' ? Placeholder(counted) : $"MessagePart.Value({counted})");
            }
            else
            {
                literal.Append(sign);
            }
        }

        if (_text.Ahead == '}' != isCase)
        {
            string place = $"a brace is closed and not opened, at {_text.Position + 1}";
            throw new MessageException(isCase ? "a brace is opened and not closed" : place);
        }

        EndLiteral();
        return $"[{string.Join(", ", parts)}]";

        void EndLiteral()
        {
            if (literal.Length > 0)
            {
                parts.Add($"MessagePart.Text({Quote(literal.ToString())})");
                literal.Clear();
            }
        }
    }

    private string Placeholder(int counted)
    {
        string name = _text.UpTo(',', '}');
        int index = _arguments.TakeWhile(argument => argument.Name != name).Count();
        if (index == _arguments.Count)
        {
            throw new MessageException($"'{{{name}}}' is not declared in the comment");
        }

        Argument argument = _arguments[index];
        _used.Add(name);
        if (_text.Next() == '}')
        {
            return Plain(argument, index);
        }

        string format = _text.UpTo(',', '}');
        if (_text.Next() == '}')
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

    // What is absent has no text, and a flag has none in any language: both must be selected by first.
    private string Plain(Argument argument, int index) =>
        argument.TypeName == "flag" ? throw new MessageException($"the flag '{argument.Name}' can be selected by and not be printed")
        : MayBeAbsent(argument)
            ? throw new MessageException(
                $"'{argument.Name}' may be absent: print it in the other case of {{{argument.Name}, select, none {{..}} ..}}"
            )
        : $"MessagePart.Value({index})";

    // Only a count has a grammatical number; a measure such as 1.5 in has not.
    private string Plural(Argument argument, int index) =>
        argument.TypeName == "count" && !argument.IsList && !MayBeAbsent(argument)
            ? $"MessagePart.Plural({index}, {Cases(argument, index, Count.IsMatch)})"
            : throw new MessageException($"a plural needs a count; '{argument.Name}' is none, or may be absent");

    private string Select(Argument argument, int index, int counted)
    {
        Func<string, bool> allowed =
            argument.TypeName == "flag" ? key => key is "true" or "false" or "other"
            : argument.TypeName == "word" && !argument.IsList ? MessageClass.IsKebab
            : argument.IsOptional || argument.IsList ? key => key is "none" or "other"
            : throw new MessageException($"'{argument.Name}' cannot be selected by: it is no word, no flag, and never absent");
        return $"MessagePart.Select({index}, {Cases(argument, counted, allowed)})";
    }

    private string List(Argument argument, int index)
    {
        string word = _text.UpTo('}');
        _text.Next();
        return argument.IsList && word is "and" or "or" or "sum" or "semicolon" or "to"
            ? $"MessagePart.List({index}, Conjunction.{MessageClass.Pascal(word)})"
            : throw new MessageException($"'{argument.Name}, list' needs a list, and one of: and, or, sum, semicolon, to");
    }

    // Every list of cases has "other", and "none" where the argument may be absent: a message then always has a text.
    private string Cases(Argument argument, int counted, Func<string, bool> allowed)
    {
        var cases = new Dictionary<string, string>();
        for (_text.SkipSpace(); _text.Ahead != '}'; _text.SkipSpace())
        {
            string key = _text.UpTo('{');
            if (!allowed(key) || cases.ContainsKey(key))
            {
                throw new MessageException($"'{key}' is no case of '{argument.Name}', or is there twice");
            }

            _text.Next();
            bool isAbsent = key == "none" && (argument.IsOptional || argument.IsList);
            bool isNew = !isAbsent && MayBeAbsent(argument) && _present.Add(argument.Name);
            string parts = Parts(counted, isCase: true);
            if (isNew)
            {
                _present.Remove(argument.Name);
            }

            _text.Next();
            if (argument.TypeName == "word" && key != "other" && !isAbsent)
            {
                _members.Add($"{argument.Code}.{MessageClass.Pascal(key)}");
            }

            cases.Add(
                key,
                key == "other" ? $"MessageCase.Other({parts})"
                    : isAbsent ? $"MessageCase.Absent({parts})"
                    : $"new({Quote(key)}, {parts})"
            );
        }

        _text.Next();
        string? missing =
            !cases.ContainsKey("other") ? "other"
            : MayBeAbsent(argument) && !cases.ContainsKey("none") ? "none"
            : null;
        return missing is null
            ? $"[{string.Join(", ", cases.Values)}]"
            : throw new MessageException($"'{argument.Name}' lacks the case {missing}");
    }

    private bool MayBeAbsent(Argument argument) => argument.IsOptional && !_present.Contains(argument.Name);

    private static string Quote(string text) => SymbolDisplay.FormatLiteral(text, quote: true);
}
