using System.Collections.Immutable;

namespace CushionService.Engine.Messages;

/// <summary>The wording of a message in every language that has one. The generator reads and checks it when the service is built.</summary>
public sealed class MessageTemplate
{
    private readonly ImmutableArray<MessagePart>[] _bodies = new ImmutableArray<MessagePart>[(int)Language.Spanish + 1];

    /// <summary>A template.</summary>
    /// <param name="key">The area, a dot and the key of the resource file.</param>
    /// <param name="names">The names of the arguments.</param>
    /// <param name="bodies">The parts in each language, English among them.</param>
    public MessageTemplate(
        string key,
        ImmutableArray<string> names,
        ReadOnlySpan<(Language Language, ImmutableArray<MessagePart> Parts)> bodies
    )
    {
        (Key, Names) = (key, names);
        foreach ((Language language, ImmutableArray<MessagePart> parts) in bodies)
        {
            _bodies[(int)language] = parts;
        }
    }

    /// <summary>The area, a dot and the key of the resource file: "step.join-run".</summary>
    public string Key { get; }

    /// <summary>The names of the arguments, in their order.</summary>
    public ImmutableArray<string> Names { get; }

    /// <summary>The language that is written where one is asked for: English where there is no translation.</summary>
    public Language Written(Language asked) => _bodies[(int)asked].IsDefault ? Language.English : asked;

    /// <summary>The parts in a language, or in English.</summary>
    public ImmutableArray<MessagePart> In(Language language) => _bodies[(int)Written(language)];
}
