using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.PerfectBoxes;

/// <summary>How much a run likes each kind in each turn: a factor on what a candidate is worth. Drawn anew for every run, so that restarts
/// differ.</summary>
/// <param name="kinds">Number of kinds.</param>
internal sealed class KindLikings(int kinds)
{
    private readonly double[] _likings = new double[2 * kinds];

    /// <summary>The liking of a kind in a turn: twice the kind, and 1 for turned.</summary>
    public double this[int code] => _likings[code];

    /// <summary>Gives each kind, in each turn, a liking for the coming run.</summary>
    /// <param name="noise">0 for none, 1 for from half to one and a half.</param>
    /// <param name="random">Draws them.</param>
    public void Draw(double noise, ref Xorshift random)
    {
        for (var code = 0; code < _likings.Length; code++)
        {
            _likings[code] = 1 + noise * (random.Next(1 << 20) / (double)(1 << 20) - 0.5);
        }
    }
}
