namespace CushionService.Client;

/// <summary>A member of an enumeration as the contract spells it.</summary>
/// <param name="word">The word, such as <c>hand-sewn</c>.</param>
[AttributeUsage(AttributeTargets.Field)]
public sealed class WordAttribute(string word) : Attribute
{
    /// <summary>The word.</summary>
    public string Word { get; } = word;
}
