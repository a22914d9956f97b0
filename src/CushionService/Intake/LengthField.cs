using CushionService.Contract;

namespace CushionService.Intake;

/// <summary>A length that a record of the contract has.</summary>
/// <typeparam name="T">The record.</typeparam>
/// <param name="name">The property.</param>
/// <param name="slot">Its place among the record's lengths.</param>
/// <param name="get">Gets it as written.</param>
/// <remarks>Made once for each field; <see cref="Fields{T}"/> reads its slot.</remarks>
internal sealed class LengthField<T>(string name, int slot, Func<T, Measure?> get)
{
    /// <summary>The property.</summary>
    public string Name { get; } = name;

    /// <summary>Its place among the record's lengths.</summary>
    public int Slot { get; } = slot;

    /// <summary>Whether a record has it.</summary>
    public bool IsGiven(T record) => get(record) is not null;
}
