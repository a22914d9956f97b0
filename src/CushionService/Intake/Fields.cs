using CushionService.Engine.Measures;

namespace CushionService.Intake;

/// <summary>The fields of a record that have been checked: what is asked for here has passed.</summary>
/// <typeparam name="T">The record.</typeparam>
/// <param name="record">The record as written.</param>
/// <param name="lengths">Where its lengths are kept.</param>
/// <param name="start">Where they begin.</param>
/// <param name="isSound">Whether every field passed.</param>
internal readonly struct Fields<T>(T record, LengthStore lengths, int start, bool isSound)
{
    /// <summary>Whether every field passed, so that texts and numbers can be taken from the record.</summary>
    public bool IsSound { get; } = isSound;

    /// <summary>A length; null where it is left out, or was refused.</summary>
    public Length? this[LengthField<T> field] => lengths[start + field.Slot];

    /// <summary>A length, or what is usual where it is left out; null where it was refused.</summary>
    /// <param name="field">The length.</param>
    /// <param name="usual">What is usual.</param>
    public Length? Or(LengthField<T> field, Length usual) => this[field] ?? (field.IsGiven(record) ? null : usual);
}
