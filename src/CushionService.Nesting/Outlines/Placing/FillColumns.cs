using System.Runtime.InteropServices;

namespace CushionService.Nesting.Outlines.Placing;

/// <summary>The columns on which a fill tries a copy. Where a copy lies lowest it touches an edge of the strip or the box of another, or it
/// could move aside; that is so for rectangles, and near enough for a first layout of outlines.</summary>
/// <param name="copies">The copies.</param>
/// <param name="arrangement">Where those laid so far lie; the others are at infinity.</param>
internal sealed class FillColumns(Copies copies, Arrangement arrangement)
{
    private readonly List<double> _columns = [];

    /// <summary>Where the copy lies at an edge of the strip, or beside a copy or a flaw.</summary>
    /// <param name="shape">The shape that is to be laid.</param>
    /// <param name="roomX">The greatest left edge that it may have.</param>
    /// <returns>Left edges, ascending, each once; valid until the next call.</returns>
    public ReadOnlySpan<double> For(int shape, double roomX)
    {
        _columns.Clear();
        _columns.Add(0);
        _columns.Add(roomX);
        for (var other = 0; other < arrangement.All; other++)
        {
            if (double.IsFinite(arrangement.X[other]))
            {
                _columns.Add(arrangement.X[other] - copies.Across[shape]);
                _columns.Add(arrangement.X[other] + arrangement.Across[other]);
            }
        }

        _columns.Sort();
        var kept = 0;
        for (var index = 0; index < _columns.Count; index++)
        {
            var x = _columns[index];
            if (x >= 0 && x <= roomX && (kept == 0 || x > _columns[kept - 1]))
            {
                _columns[kept++] = x;
            }
        }

        return CollectionsMarshal.AsSpan(_columns)[..kept];
    }
}
