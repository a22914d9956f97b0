using System.Collections.Immutable;

namespace CushionService.Engine.Messages;

/// <summary>One case of a choice in a template.</summary>
/// <param name="Key">A plural category, an exact count such as "=0", a word, "true" or "false", "none" for what is absent or empty, or
/// "other".</param>
/// <param name="Parts">What is written then.</param>
public sealed record MessageCase(string Key, ImmutableArray<MessagePart> Parts);
