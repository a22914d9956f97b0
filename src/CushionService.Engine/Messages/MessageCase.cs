using System.Collections.Immutable;

namespace CushionService.Engine.Messages;

/// <summary>One case of a choice in a template.</summary>
/// <param name="Key">A plural category, an exact count such as "=0", a word, "true" or "false"; or one of the signs that are no
/// words.</param>
/// <param name="Parts">What is written then.</param>
public sealed record MessageCase(string Key, ImmutableArray<MessagePart> Parts)
{
    internal const string OtherKey = "*";
    internal const string AbsentKey = "-";

    /// <summary>What is written when no other case is the value's: "other" in resource files.</summary>
    public static MessageCase Other(ImmutableArray<MessagePart> parts) => new(OtherKey, parts);

    /// <summary>What is written for what is absent, or a list without entries: "none" in resource files.</summary>
    public static MessageCase Absent(ImmutableArray<MessagePart> parts) => new(AbsentKey, parts);
}
