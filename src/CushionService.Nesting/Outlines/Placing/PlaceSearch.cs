using CushionService.Nesting.Search;

namespace CushionService.Nesting.Outlines.Placing;

/// <summary>Looks for a place where one copy overlaps the others less: from where it is and from places drawn at random,
/// slides along the strip and across it in turns until neither helps.</summary>
/// <param name="copies">The copies and flaws.</param>
/// <param name="arrangement">Where they lie; not changed here.</param>
/// <param name="lines">Finds the best place on a line.</param>
/// <param name="weights">What overlaps weigh, by copy and other.</param>
/// <param name="budget">Pays for places that are weighed.</param>
internal sealed class PlaceSearch(Copies copies, Arrangement arrangement, LineSearch lines, double[] weights, StepBudget budget)
{
    /// <summary>Slides in turns, at most, before a place is weighed.</summary>
    private const int MostSlides = 6;

    // A place on a line is weighed once for many that were looked at. Points of a lattice are each weighed, so that they pay what that
    // takes, as measured: a step for each few others that are passed over, and more for each depth.
    private const int PairsPerStep = 4;
    private const int DepthSteps = 10;

    /// <summary>The turn of the best place.</summary>
    public int Turn { get; private set; }

    /// <summary>Its left edge, grid units.</summary>
    public double X { get; private set; }

    /// <summary>Its lower edge, grid units.</summary>
    public double Y { get; private set; }

    /// <summary>What overlaps weigh there.</summary>
    public double Cost { get; private set; }

    /// <summary>Finds the best place for a copy within the length; whether it costs less than <paramref name="limit"/>.</summary>
    /// <param name="copy">Which.</param>
    /// <param name="length">Where it must end, grid units.</param>
    /// <param name="limit">What its overlaps weigh now.</param>
    /// <param name="samples">Random places to try.</param>
    /// <param name="random">Draws them.</param>
    public bool Improve(int copy, double length, double limit, int samples, ref Xorshift random)
    {
        Cost = limit;
        var turns = copies.TurnsOf(copy);
        if (copies.Aligned[copy] is { } phase)
        {
            OnLattice(copy, phase, length, samples, ref random);
            return Cost < limit;
        }

        for (var turn = 0; turn < turns.Length && Cost > 0; turn++)
        {
            var shape = turns[turn].Shape;
            var (roomX, roomY) = (copies.Width - copies.Across[shape], length - copies.Along[shape]);
            if (roomY < 0)
            {
                continue;
            }

            // A turned copy keeps its middle.
            var x = arrangement.X[copy] + OnGrid((copies.Across[arrangement.Shape[copy]] - copies.Across[shape]) / 2);
            var y = arrangement.Y[copy] + OnGrid((copies.Along[arrangement.Shape[copy]] - copies.Along[shape]) / 2);
            Slide(copy, turn, Math.Clamp(x, 0, roomX), Math.Clamp(y, 0, roomY), roomX, roomY, ref random);
        }

        for (var sample = 0; sample < samples && Cost > 0; sample++)
        {
            var turn = random.Next(turns.Length);
            var shape = turns[turn].Shape;
            var (roomX, roomY) = (copies.Width - copies.Across[shape], length - copies.Along[shape]);
            if (roomY >= 0)
            {
                Slide(copy, turn, Draw(roomX, ref random), Draw(roomY, ref random), roomX, roomY, ref random);
            }
        }

        return Cost < limit;
    }

    /// <summary>A random place within the room, on the grid on which the outlines were drawn.</summary>
    /// <param name="room">The greatest place, grid units.</param>
    /// <param name="random">Draws it.</param>
    private double Draw(double room, ref Xorshift random) => OnGrid(room * (random.Next(1 << 30) / (double)((1 << 30) - 1)));

    /// <summary>The next lower place on the grid on which the outlines were drawn.</summary>
    private double OnGrid(double place) => Math.Floor(place / copies.DrawnOn) * copies.DrawnOn;

    /// <summary>Slides a copy from a place and weighs where it ends.</summary>
    /// <param name="copy">Which.</param>
    /// <param name="turn">One of its turns.</param>
    /// <param name="x">Where it starts, grid units.</param>
    /// <param name="y">Where it starts, likewise.</param>
    /// <param name="roomX">The greatest left edge.</param>
    /// <param name="roomY">The greatest lower edge.</param>
    /// <param name="random">Which way first.</param>
    private void Slide(int copy, int turn, double x, double y, double roomX, double roomY, ref Xorshift random)
    {
        var shape = copies.TurnsOf(copy)[turn].Shape;
        var column = random.Next(2) == 0;
        for (var (slide, stuck) = (0, 0); slide < MostSlides && stuck < 2; slide++, column = !column)
        {
            var (t, here, room) = column ? (x, y, roomY) : (y, x, roomX);
            var there = lines.Best(copy, shape, column, t, room, here, random.Next(arrangement.All));
            stuck = there == here ? stuck + 1 : 0;
            if (column)
            {
                y = there;
            }
            else
            {
                x = there;
            }
        }

        Weigh(copy, turn, x, y);
    }

    /// <summary>Keeps a place if its overlaps weigh less than those of the best so far.</summary>
    /// <param name="copy">Which.</param>
    /// <param name="turn">One of its turns.</param>
    /// <param name="x">Left edge, grid units.</param>
    /// <param name="y">Lower edge, likewise.</param>
    /// <returns>How many others were near enough to be looked at.</returns>
    private int Weigh(int copy, int turn, double x, double y)
    {
        var shape = copies.TurnsOf(copy)[turn].Shape;
        var row = copy * arrangement.All;
        var (across, along) = (copies.Across[shape], copies.Along[shape]);
        budget.Spend(2 + arrangement.All / 4);
        var (cost, near) = (0.0, 0);
        for (var other = 0; other < arrangement.All; other++)
        {
            var (dx, dy) = (x - arrangement.X[other], y - arrangement.Y[other]);
            if (dx > -across && dx < arrangement.Across[other] && dy > -along && dy < arrangement.Along[other] && other != copy)
            {
                budget.Spend(2);
                near++;
                cost += weights[row + other] * copies.Book.Depth(arrangement.Shape[other], shape, dx, dy);
                if (cost >= Cost)
                {
                    return near;
                }
            }
        }

        (Turn, X, Y, Cost) = (turn, x, y, cost);
        return near;
    }

    /// <summary>Tries points of the lattice: all of them when they are few, else as many drawn at random.</summary>
    /// <param name="copy">Which; it is aligned.</param>
    /// <param name="phase">Its phase.</param>
    /// <param name="length">Where it must end, grid units.</param>
    /// <param name="samples">Random places that a free copy would try; a point costs about an eighth of
    /// one.</param>
    /// <param name="random">Draws points.</param>
    private void OnLattice(int copy, Alignment phase, double length, int samples, ref Xorshift random)
    {
        var shape = copies.TurnsOf(copy)[0].Shape;
        var (roomX, roomY) = (copies.Width - copies.Across[shape], length - copies.Along[shape]);
        if (roomY < 0)
        {
            return;
        }

        var points = new LatticePoints(copies.Lattice!, phase, (long)roomX);
        var perColumn = (int)Math.Min(roomY / points.Step + 1, 1 << 20);
        var most = 8 * (samples + 1);
        var every = (long)perColumn * points.Columns <= most;
        var tries = every ? perColumn * points.Columns : most;
        for (var point = 0; point < tries && Cost > 0; point++)
        {
            var column = every ? point / perColumn : random.Next(points.Columns);
            var y = points.RiseTo(column, 0) + (double)(every ? point % perColumn : random.Next(perColumn)) * points.Step;
            if (y <= roomY)
            {
                var x =
                    copies.Lattice!.Width > 0
                        ? points.X(column)
                        : lines.Best(copy, shape, column: false, y, roomX, Draw(roomX, ref random), random.Next(arrangement.All));
                budget.Spend(arrangement.All / PairsPerStep + DepthSteps * Weigh(copy, 0, x, y));
            }
        }
    }
}
