using System.Collections.Immutable;

namespace CushionService.Engine.Messages;

/// <summary>A part of a template.</summary>
public sealed class MessagePart
{
    private MessagePart(PartForm form, int argument) => (Form, Argument) = (form, argument);

    /// <summary>How it is written.</summary>
    internal PartForm Form { get; }

    /// <summary>Which argument it writes or chooses by.</summary>
    internal int Argument { get; }

    /// <summary>The words of a text.</summary>
    internal string Words { get; private init; } = "";

    /// <summary>What comes before the last entry of a list.</summary>
    internal Conjunction Conjunction { get; private init; }

    /// <summary>The cases of a plural or a selection.</summary>
    internal ImmutableArray<MessageCase> Cases { get; private init; } = [];

    /// <summary>Words that are always the same.</summary>
    public static MessagePart Text(string words) => new(PartForm.Text, -1) { Words = words };

    /// <summary>The value of an argument.</summary>
    public static MessagePart Value(int argument) => new(PartForm.Value, argument);

    /// <summary>The entries of a list, with a conjunction before the last.</summary>
    public static MessagePart List(int argument, Conjunction conjunction) => new(PartForm.Value, argument) { Conjunction = conjunction };

    /// <summary>The case of a count: its own, or its category's, or the other one.</summary>
    public static MessagePart Plural(int argument, ImmutableArray<MessageCase> cases) => new(PartForm.Plural, argument) { Cases = cases };

    /// <summary>The case of a word or a flag, of what is absent, or the other one.</summary>
    public static MessagePart Select(int argument, ImmutableArray<MessageCase> cases) => new(PartForm.Select, argument) { Cases = cases };
}
