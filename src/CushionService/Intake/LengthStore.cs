using CushionService.Engine.Measures;

namespace CushionService.Intake;

/// <summary>The lengths of an order that passed their checks, record after record, in one array.</summary>
internal sealed class LengthStore
{
    private Length?[] _lengths = new Length?[64];
    private int _used;

    /// <summary>A length.</summary>
    /// <param name="at">Its index: where its record's lengths begin, and the field's slot.</param>
    public ref Length? this[int at] => ref _lengths[at];

    /// <summary>Makes room for a record's lengths.</summary>
    /// <returns>Where they begin; none of them is there yet.</returns>
    /// <param name="count">How many lengths the record may have.</param>
    public int Take(int count)
    {
        int start = _used;
        _used += count;
        if (_used > _lengths.Length)
        {
            Array.Resize(ref _lengths, Math.Max(_used, 2 * _lengths.Length));
        }

        return start;
    }
}
