namespace CushionService.Engine.Messages;

/// <summary>A word of the contract.</summary>
/// <param name="Text">As the contract spells it: "hook-and-loop".</param>
/// <param name="Key">The key of its words in other languages: its enumeration before it.</param>
internal sealed record ContractWord(string Text, string Key)
{
    /// <inheritdoc />
    public override string ToString() => Text;
}
