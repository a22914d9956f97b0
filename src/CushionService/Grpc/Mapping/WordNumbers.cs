using Google.Protobuf.Collections;

namespace CushionService.Grpc.Mapping;

/// <summary>Pairs the numbers of a message's enumeration with the members of the contract's, by their names.</summary>
internal static class WordNumbers<TWire, TContract>
    where TWire : struct, Enum
    where TContract : struct, Enum
{
    private static readonly TWire[] Wires = [.. Enum.GetNames<TContract>().Select(Enum.Parse<TWire>)];
    private static readonly TContract[] Contracts = [.. Enum.GetNames<TContract>().Select(Enum.Parse<TContract>)];
    private static readonly EqualityComparer<TWire> SameWire = EqualityComparer<TWire>.Default;
    private static readonly EqualityComparer<TContract> SameContract = EqualityComparer<TContract>.Default;

    /// <summary>The contract's member; null for the number zero, and for one that is not known, which is a doubt.</summary>
    public static TContract? Read(TWire wire, MappingErrors errors)
    {
        for (int i = 0; i < Wires.Length; i++)
        {
            if (SameWire.Equals(Wires[i], wire))
            {
                return Contracts[i];
            }
        }

        errors.Any |= !SameWire.Equals(wire, default);
        return null;
    }

    /// <summary>The contract's members of a list, those left out that are not known; null for none, since a message cannot tell an empty
    /// list from a missing one.</summary>
    public static IReadOnlyList<TContract>? ReadAll(RepeatedField<TWire> wires, MappingErrors errors)
    {
        errors.Any |= wires.Contains(default);
        return wires.Count == 0 ? null : [.. wires.Select(wire => Read(wire, errors)).OfType<TContract>()];
    }

    /// <summary>The message's number.</summary>
    public static TWire Write(TContract contract)
    {
        for (int i = 0; i < Contracts.Length; i++)
        {
            if (SameContract.Equals(Contracts[i], contract))
            {
                return Wires[i];
            }
        }

        throw new ArgumentOutOfRangeException(nameof(contract));
    }

    /// <summary>Adds the numbers of a list of members.</summary>
    public static void WriteAll(IReadOnlyList<TContract> contracts, RepeatedField<TWire> wires)
    {
        foreach (TContract contract in contracts)
        {
            wires.Add(Write(contract));
        }
    }
}
