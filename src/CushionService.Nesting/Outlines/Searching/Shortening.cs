using CushionService.Nesting.Outlines.Placing;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Outlines.Searching;

/// <summary>Moves that make overlaps on purpose: a cut that takes length away, and an exchange that leads out of a dead end
/// (Gardeyn and Wauters, arXiv 2509.13329).</summary>
internal sealed class Shortening
{
    /// <summary>How often a partner of another shape is drawn.</summary>
    private const int ExchangeTries = 8;

    private readonly Copies _copies;
    private readonly Arrangement _arrangement;
    private readonly int[] _large;

    /// <summary>Moves for one arrangement.</summary>
    /// <param name="copies">The copies and flaws.</param>
    /// <param name="arrangement">What is changed, in place.</param>
    public Shortening(Copies copies, Arrangement arrangement)
    {
        (_copies, _arrangement) = (copies, arrangement);
        _large = LargeCopies.Of(copies);
    }

    /// <summary>Cuts the arrangement across at a random place and moves what lies beyond it in, so that all ends by the target: overlaps
    /// arise at the cut alone, and the rest keeps its good places.</summary>
    /// <param name="target">The wanted length, grid units; at least what every copy needs in some turn.</param>
    /// <param name="random">Where to cut.</param>
    /// <returns>Whether every copy lies by the target; a matched copy may have no such place.</returns>
    public bool CutTo(double target, ref Xorshift random)
    {
        var length = _arrangement.Length;
        if (length <= target)
        {
            return true;
        }

        var cut = length * (random.Next(1 << 20) / (double)(1 << 20));
        for (var copy = 0; copy < _copies.Count; copy++)
        {
            if (_copies.Aligned[copy] is { } phase)
            {
                if (!OntoLattice(copy, phase, target, ref random))
                {
                    return false;
                }

                continue;
            }

            // A copy that is longer than the target as it lies is turned until it is not.
            for (var turn = 0; _arrangement.Along[copy] > target; turn++)
            {
                if (turn == _copies.TurnsOf(copy).Length)
                {
                    return false;
                }

                PutWithin(copy, turn, _arrangement.X[copy], _arrangement.Y[copy], target);
            }

            // Downward to the grid on which the outlines were drawn: there they can touch exactly.
            var beyond = _arrangement.Y[copy] + _arrangement.Along[copy] / 2 > cut;
            var moved = _arrangement.Y[copy] - (length - target);
            var y = beyond ? Math.Floor(moved / _copies.DrawnOn) * _copies.DrawnOn : _arrangement.Y[copy];
            PutWithin(copy, _arrangement.Turn[copy], _arrangement.X[copy], y, target);
        }

        return true;
    }

    /// <summary>Exchanges two large copies of different shape; where all are equal, one of them goes to a random place.</summary>
    /// <param name="target">The length within which they lie afterwards, grid units.</param>
    /// <param name="random">Which copies.</param>
    public void Exchange(double target, ref Xorshift random)
    {
        if (_large.Length == 0)
        {
            return;
        }

        var one = _large[random.Next(_large.Length)];
        for (var tries = 0; tries < ExchangeTries; tries++)
        {
            var other = _large[random.Next(_large.Length)];
            if (_copies.TurnsOf(one)[0].Shape != _copies.TurnsOf(other)[0].Shape)
            {
                var (x, y) = (_arrangement.X[one], _arrangement.Y[one]);
                PutWithin(one, _arrangement.Turn[one], _arrangement.X[other], _arrangement.Y[other], target);
                PutWithin(other, _arrangement.Turn[other], x, y, target);
                return;
            }
        }

        var turn = random.Next(_copies.TurnsOf(one).Length);
        PutWithin(one, turn, Share(_copies.Width, ref random), Share(target, ref random), target);
    }

    /// <summary>A random part of an extent, on the grid on which the outlines were drawn.</summary>
    private double Share(double extent, ref Xorshift random) =>
        Math.Floor(extent * (random.Next(1 << 20) / (double)(1 << 20)) / _copies.DrawnOn) * _copies.DrawnOn;

    /// <summary>Lays a copy as near to a place as the strip and the target allow.</summary>
    /// <param name="copy">Which.</param>
    /// <param name="turn">Which of its turns.</param>
    /// <param name="x">Wanted place across, grid units.</param>
    /// <param name="y">Wanted place along.</param>
    /// <param name="target">Where it must end.</param>
    private void PutWithin(int copy, int turn, double x, double y, double target)
    {
        var shape = _copies.TurnsOf(copy)[turn].Shape;
        var (roomX, roomY) = (_copies.Width - _copies.Across[shape], Math.Max(0, target - _copies.Along[shape]));
        _arrangement.Put(copy, turn, Math.Clamp(x, 0, roomX), Math.Clamp(y, 0, roomY));
    }

    /// <summary>Lowers a copy that sticks out to a point of its lattice, of another column if need be.</summary>
    /// <param name="copy">Which; it is aligned.</param>
    /// <param name="phase">Its phase.</param>
    /// <param name="target">Where it must end, grid units.</param>
    /// <param name="random">Which column to try first.</param>
    /// <returns>Whether there is such a point.</returns>
    private bool OntoLattice(int copy, Alignment phase, double target, ref Xorshift random)
    {
        var roomY = target - _arrangement.Along[copy];
        if (_arrangement.Y[copy] <= roomY)
        {
            return true;
        }

        var points = new LatticePoints(_copies.Lattice!, phase, _copies.Width - (long)_arrangement.Across[copy]);
        var lowered = _arrangement.Y[copy] - Math.Ceiling((_arrangement.Y[copy] - roomY) / points.Step) * points.Step;
        if (lowered >= 0)
        {
            _arrangement.Put(copy, 0, _arrangement.X[copy], lowered);
            return true;
        }

        var first = random.Next(Math.Max(1, points.Columns));
        for (var shift = 0; shift < points.Columns; shift++)
        {
            var column = (first + shift) % points.Columns;
            if (points.RiseTo(column, 0) <= roomY)
            {
                _arrangement.Put(copy, 0, points.X(column), points.RiseTo(column, 0));
                return true;
            }
        }

        return false;
    }
}
