using System.Collections.Immutable;
using System.Reflection;
using CushionService.Contract;
using CushionService.Engine.Measures;

namespace CushionService.Intake;

/// <summary>Checks the entries of lists of lengths and of numbers. How many there are is checked by the record's form.</summary>
internal static class EntryCheck
{
    /// <summary>The lengths; null when one of them is none, or out of the list's range.</summary>
    /// <param name="entries">The lengths as written.</param>
    /// <param name="list">The property that holds them, with the range of each.</param>
    /// <param name="findings">Takes what is wrong, at the place of the entry.</param>
    public static ImmutableArray<Length>? Lengths(IReadOnlyList<Measure> entries, PropertyInfo list, Findings findings)
    {
        (Length minimum, Length maximum) = LengthLimits.Of(list)!.In(findings.Unit);
        var lengths = ImmutableArray.CreateBuilder<Length>(entries.Count);
        for (int i = 0; i < entries.Count; i++)
        {
            Findings at = findings.Within(list.Name, i);
            string words = FieldNames.Words(list.Name);
            if (!entries[i].TryRead(findings.Unit, out Length length))
            {
                at.Refuse("", "not-a-length", FieldDetails.Unread(words, entries[i]));
            }
            else if (length < minimum || length > maximum)
            {
                at.RefuseRange("", "out-of-range", FieldTexts.EntryLengthRange(words, minimum, maximum), minimum, maximum);
            }
            else
            {
                lengths.Add(length);
            }
        }

        return lengths.Count == entries.Count ? lengths.ToImmutable() : null;
    }

    /// <summary>Whether every number is in the list's range.</summary>
    /// <param name="entries">The numbers, each finite.</param>
    /// <param name="list">The property that holds them, with the range of each.</param>
    /// <param name="findings">Takes what is wrong, at the place of the entry.</param>
    public static bool Numbers(IReadOnlyList<double> entries, PropertyInfo list, Findings findings)
    {
        EntryRangeAttribute range = list.GetCustomAttribute<EntryRangeAttribute>()!;
        bool sound = true;
        for (int i = 0; i < entries.Count; i++)
        {
            if (entries[i] < range.Minimum || entries[i] > range.Maximum)
            {
                findings
                    .Within(list.Name, i)
                    .Refuse(
                        "",
                        "out-of-range",
                        FieldTexts.EntryNumberRange(FieldNames.Words(list.Name), (decimal)range.Minimum, (decimal)range.Maximum),
                        new FindingRange(range.Minimum, range.Maximum)
                    );
                sound = false;
            }
        }

        return sound;
    }
}
