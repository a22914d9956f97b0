using System.Collections.Immutable;

namespace CushionService.Engine.Messages;

/// <summary>A sentence, or a part of one, as data: what it says and its values. <see cref="MessageWriter"/> puts it into words.</summary>
/// <param name="Template">The wording in every language.</param>
/// <param name="Arguments">The values, in the order of the template's names.</param>
/// <remarks>Made by the classes that the build makes of resource files. It holds no unit and no language. Two are equal when key and values
/// are.</remarks>
public sealed record Message(MessageTemplate Template, ImmutableArray<MessageArgument> Arguments)
{
    /// <summary>What it says, for programs: "step.join-run".</summary>
    public string Key => Template.Key;

    /// <inheritdoc />
    public bool Equals(Message? other) =>
        other is not null && Key == other.Key && Arguments.AsSpan().SequenceEqual(other.Arguments.AsSpan());

    /// <inheritdoc />
    public override int GetHashCode() => HashCode.Combine(Key, Arguments.IsEmpty ? default : Arguments[0]);

    /// <summary>The English sentence with inches, for reading failures of tests.</summary>
    public override string ToString() => new MessageWriter(Language.English, Measures.LengthUnit.Inch).Text(this);
}
