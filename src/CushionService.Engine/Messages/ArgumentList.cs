using System.Collections.Immutable;

namespace CushionService.Engine.Messages;

/// <summary>The values of an argument that is a list; equal when they are, in their order.</summary>
/// <param name="Values">The values.</param>
public sealed record ArgumentList(ImmutableArray<MessageArgument> Values)
{
    /// <inheritdoc />
    public bool Equals(ArgumentList? other) => other is not null && Values.AsSpan().SequenceEqual(other.Values.AsSpan());

    /// <inheritdoc />
    public override int GetHashCode() => Values.IsEmpty ? 0 : HashCode.Combine(Values.Length, Values[0]);
}
