namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>What the copies that are left need of a box: area, weight along the rows, weight along the columns, and both
/// weights together. A copy that may turn counts in the turn where it needs least.</summary>
internal sealed class BoxNeeds
{
    private readonly long[] _area;
    private readonly long[] _rows;
    private readonly long[] _columns;
    private readonly long[] _both;
    private readonly long _rowFactor;
    private readonly long _columnFactor;

    /// <summary>Works out what one copy of each kind needs.</summary>
    /// <param name="box">The rectangles and the box.</param>
    /// <param name="rowWeights">Weights along the width.</param>
    /// <param name="columnWeights">Weights along the height.</param>
    public BoxNeeds(BoxContents box, AxisWeights rowWeights, AxisWeights columnWeights)
    {
        var sideways = box.Sideways;
        int kinds = box.Count.Length;
        (_area, _rows, _columns, _both) = (new long[kinds], new long[kinds], new long[kinds], new long[kinds]);

        // One turn serves rows and columns at once: the sum of the two needs, each scaled by the other's room, in the turn where it is
        // least.
        _rowFactor = Math.Max(1, columnWeights.Best[box.Height] * box.Width >> 20);
        _columnFactor = Math.Max(1, rowWeights.Best[box.Width] * box.Height >> 20);
        for (var kind = 0; kind < kinds; kind++)
        {
            var (rowUpright, rowTurned) = rowWeights.Shares(kind, box);
            var (columnUpright, columnTurned) = columnWeights.Shares(kind, sideways);
            _area[kind] = (long)box.Across[kind] * box.Along[kind];
            _rows[kind] = Math.Min(rowUpright, rowTurned);
            _columns[kind] = Math.Min(columnUpright, columnTurned);
            _both[kind] = Math.Min(Sum(rowUpright, columnUpright), Sum(rowTurned, columnTurned));
        }

        long Sum(long row, long column) =>
            Math.Max(row, column) == long.MaxValue ? long.MaxValue : row * _rowFactor + column * _columnFactor;
    }

    /// <summary>The needs of a number of copies of each kind.</summary>
    /// <param name="copies">Copies of each kind.</param>
    public (long Area, long Rows, long Columns, long Both) Of(int[] copies)
    {
        long area = 0;
        long rows = 0;
        long columns = 0;
        long both = 0;
        for (var kind = 0; kind < copies.Length; kind++)
        {
            area += copies[kind] * _area[kind];
            rows += copies[kind] * _rows[kind];
            columns += copies[kind] * _columns[kind];
            both += copies[kind] * _both[kind];
        }

        return (area, rows, columns, both);
    }

    /// <summary>The rooms of rows and columns, added as the needs of both are.</summary>
    /// <param name="rowRoom">Weight that the free rows can hold.</param>
    /// <param name="columnRoom">Weight that the free columns can hold.</param>
    public long Together(long rowRoom, long columnRoom) => rowRoom * _rowFactor + columnRoom * _columnFactor;
}
