using System.Numerics;
using CushionService.Contract;

namespace CushionService.Intake;

/// <summary>The form of a contract record as its attributes state it: what is required, ranges of lengths and numbers, patterns of text.
/// The OpenAPI document and the catalogue read the same attributes.</summary>
/// <typeparam name="T">The record.</typeparam>
internal static class RecordForm<T>
{
    // Made once for each record, by reflection; reading an order uses none.
    private static readonly FieldCheck<T>[] Checks = FieldCheck<T>.All();
    private static readonly LengthField<T>[] Lengths =
    [
        .. Checks
            .Select(check => check.Property)
            .Where(property => property.PropertyType == typeof(Measure?))
            .Select((property, slot) => new LengthField<T>(property.Name, slot, Getters.Of<T, Measure?>(property))),
    ];

    // A field that is left out breaks a rule only where it is required: most are left out, and are passed over together.
    private static readonly Func<T, ulong> Given = Getters.Given<T>([.. Checks.Select(check => check.Property)]);
    private static readonly ulong Required = Checks
        .Index()
        .Where(check => check.Item.IsRequired)
        .Aggregate(0UL, (sum, check) => sum | (1UL << check.Index));

    // A check keeps its length in the slot that the record's field reads it from.
    static RecordForm()
    {
        foreach (FieldCheck<T> check in Checks)
        {
            check.Slot = Array.FindIndex(Lengths, length => length.Name == check.Property.Name);
        }
    }

    /// <summary>A length of the record.</summary>
    /// <param name="name">The property.</param>
    /// <exception cref="InvalidOperationException">It has no such length.</exception>
    public static LengthField<T> Length(string name) => Lengths.Single(length => length.Name == name);

    /// <summary>Checks every field of a record, and reads its lengths.</summary>
    /// <param name="record">The record.</param>
    /// <param name="findings">Takes what is wrong, and keeps the lengths that pass.</param>
    /// <returns>The fields, to be asked for what passed.</returns>
    public static Fields<T> Read(T record, Findings findings)
    {
        int start = findings.Lengths.Take(Lengths.Length);
        bool sound = true;
        for (ulong rest = Given(record) | Required; rest != 0; rest &= rest - 1)
        {
            sound &= Checks[BitOperations.TrailingZeroCount(rest)].Passes(record, start, findings);
        }

        return new Fields<T>(record, findings.Lengths, start, sound);
    }
}
