using CushionService.Engine.Quoting;
using CushionService.Nesting;
using CushionService.Nesting.Solving;

namespace CushionService.Desk;

/// <summary>Divides what the first search of a fit leaves of its effort's steps among all that is searched after it.</summary>
internal sealed class FitSteps
{
    // Kept in any case for what comes after the first search: of an effort, one part in this many.
    private const int ForRest = 16;

    // What is tried for a change: two fits where the grain is open, what they leave filled, and what is bought three times.
    private const int SearchesOfChange = 6;
    private const int MostChanges = 6;

    // What is searched once: the fit filled, and what is bought, of a second lot and with none.
    private const int Once = 4;

    // Sizes of one way that are tried: strides that double, then halves, and both ways of the grain.
    private const int QuickTrials = 24;
    private const int DecidingTrials = 3;

    private readonly Fit _fit;
    private readonly long _left;

    /// <summary>Divides the steps of a fit.</summary>
    /// <param name="fit">What the first search found.</param>
    /// <param name="effort">How hard the order is searched.</param>
    public FitSteps(Fit fit, Effort effort)
    {
        _fit = fit;
        long all = SearchCost.Most(effort);
        _left = Math.Max(all / ForRest, all - (Cost(effort) / Math.Max(1, fit.Fabrics.Length)));
        int lacking = fit.Fabrics.Count(one => one.Verdict != Engine.Fitting.FitVerdict.Fits);
        Changes = SearchCost.SharedBy(((SearchesOfChange * MostChanges * lacking) + Once) * Cost(Effort.Quick), _left);
    }

    /// <summary>By how many searches the steps of a quick one are shared where changes are tried, and what is missing.</summary>
    public int Changes { get; }

    /// <summary>By how many searches the steps of a quick one are shared where sizes are tried.</summary>
    /// <param name="ways">In how many ways cushions are sized.</param>
    public int Sizes(int ways) => SearchCost.SharedBy(QuickTrials * ways * Cost(Effort.Quick), _left);

    /// <summary>By how many the steps of a longer one are shared where a size is decided.</summary>
    /// <param name="ways">In how many ways cushions are sized.</param>
    /// <param name="effort">How hard the size is searched.</param>
    public int Deciding(int ways, Effort effort) => SearchCost.SharedBy(DecidingTrials * ways * Cost(effort), _left);

    // What one search of every fabric on hand costs, with every width that the first one tried.
    private long Cost(Effort effort) =>
        _fit.Trials * _fit.Fabrics.Sum(one => AnswerSteps.CostOf(_fit.Drafting.Pieces, one.Fabric.Id, effort));
}
