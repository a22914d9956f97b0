using Google.Protobuf.Collections;

namespace CushionService.Grpc.Mapping;

/// <summary>Maps the members of a message's enumeration and of the contract's, by their names. The numbers differ:
/// protobuf keeps 0 for unspecified.</summary>
/// <typeparam name="TWire">The enumeration of the messages.</typeparam>
/// <typeparam name="TContract">The enumeration of the contract.</typeparam>
internal static class WordNumbers<TWire, TContract>
    where TWire : struct, Enum
    where TContract : struct, Enum
{
    // Two lists in one order. A name that the other side lacks is an exception when the type is first used, which fails
    // the tests.
    private static readonly TContract[] Contracts = Enum.GetValues<TContract>();
    private static readonly TWire[] Wires = [.. Contracts.Select(contract => Enum.Parse<TWire>(contract.ToString()))];

    /// <summary>The contract's member.</summary>
    /// <param name="wire">The message's.</param>
    /// <param name="errors">Notes a number without a member.</param>
    /// <returns>The member; null for unspecified, and for a number without a member.</returns>
    public static TContract? Read(TWire wire, MappingErrors errors)
    {
        int index = Array.IndexOf(Wires, wire);
        errors.Any |= index < 0 && !wire.Equals(default(TWire));
        return index < 0 ? null : Contracts[index];
    }

    /// <summary>The contract's members of a list, without those that are not known; null for an empty list, since a
    /// message cannot tell an empty list from a missing one.</summary>
    /// <param name="wires">The message's. Unspecified has no meaning in a list, and is an error.</param>
    /// <param name="errors">Notes an entry without a member.</param>
    public static IReadOnlyList<TContract>? ReadAll(RepeatedField<TWire> wires, MappingErrors errors)
    {
        errors.Any |= wires.Contains(default);
        return wires.Count == 0 ? null : [.. wires.Select(wire => Read(wire, errors)).OfType<TContract>()];
    }

    /// <summary>The message's member.</summary>
    /// <param name="contract">A member of the contract's enumeration; no other value is ever in an answer.</param>
    public static TWire Write(TContract contract) => Wires[Array.IndexOf(Contracts, contract)];

    /// <summary>Adds the message's members of a list.</summary>
    /// <param name="contracts">The contract's.</param>
    /// <param name="wires">The field that gets them.</param>
    public static void WriteAll(IReadOnlyList<TContract> contracts, RepeatedField<TWire> wires) => wires.AddRange(contracts.Select(Write));
}
