using CushionService.Engine.Cutting;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Nesting;
using CushionService.Nesting.Solving;

namespace CushionService.Engine.Layouts;

/// <summary>Lays the pieces of a fabric with a repeat, so that the length serves every position at which its motif may be.</summary>
/// <remarks>Across, the positions are cut into spans (see <see cref="MotifSpans"/>), each of them is laid, and the longest layout counts:
/// steps go to that one as long as it is the longest. Along, the layout starts where a matched piece does, and a repeat is bought to find
/// that place; where the motif is known, the layout starts with the cut.</remarks>
internal sealed class MatchedNesting
{
    // Of all steps, one part in this many for: a layout of every span; each round on the longest; the bound; the best position.
    private const int ForAll = 4;
    private const int ForRound = 8;
    private const int ForBound = 8;
    private const int ForShortest = 16;

    // Laying boxes on all spans may take these steps, however small the share: each takes its passes at least.
    private const long AlwaysForSpans = 1_500_000;

    // Rounds of searching the longest again; spans that a repeat is cut into; starts tried for each: bounds on time.
    private const int Rounds = 4;
    private const int MostSpans = 12;
    private const int MostStarts = 3;

    // Another start saves less than a repeat: where the pieces fill more repeats than this, that is not worth laying them again.
    private const int RepeatsOfLong = 32;

    private readonly FabricSpecification _fabric;
    private readonly IReadOnlyList<CutPiece> _pieces;
    private readonly SaleGoal _goal;
    private readonly Effort _effort;
    private readonly int _sharedBy;
    private readonly CancellationToken _cancellation;
    private readonly int _starts;
    private readonly long _most;
    private readonly long _mostOfBoxes;
    private readonly List<SpanTrial> _trials = [];
    private long _steps;

    /// <summary>Prepares a search.</summary>
    /// <param name="fabric">A fabric with a repeat.</param>
    /// <param name="pieces">At least one piece that is matched.</param>
    /// <param name="goal">The lengths that are as good as each other.</param>
    /// <param name="effort">How hard to search.</param>
    /// <param name="sharedBy">How many fabrics share the effort's steps.</param>
    /// <param name="cancellation">Cancels the search.</param>
    public MatchedNesting(
        FabricSpecification fabric,
        IReadOnlyList<CutPiece> pieces,
        SaleGoal goal,
        Effort effort,
        int sharedBy,
        CancellationToken cancellation
    )
    {
        (_fabric, _pieces, _goal, _effort, _sharedBy, _cancellation) = (fabric, pieces, goal, effort, sharedBy, cancellation);
        double filled = pieces.Sum(piece => (double)piece.Across.Nanometres * piece.Along.Nanometres * piece.Quantity),
            repeat = (double)fabric.UsableWidth.Nanometres * (Repeat.Length ?? fabric.UsableWidth).Nanometres;
        _starts = filled > RepeatsOfLong * repeat ? 1 : MostStarts;
        int copies = pieces.Sum(piece => piece.Quantity);
        _most = SearchCost.Of(effort, copies, pieces.Any(piece => !piece.Outline.IsEmpty)) / sharedBy;
        _mostOfBoxes = Math.Max(SearchCost.Of(effort, copies, outlines: false) / sharedBy, AlwaysForSpans);
    }

    private RepeatSpecification Repeat => _fabric.LaidRepeat!;

    private long Spent => _steps + _trials.Sum(trial => trial.Steps);

    // A motif whose place is known both ways has one position only.
    private bool IsKnown => !Repeat.IsUnknownAcross && !Repeat.IsUnknownAlong;

    // The trial that decides what is bought; by what is sold first, then by length.
    private SpanTrial Longest => _trials.MaxBy(trial => (_goal.Rung(trial.Length), trial.Length.Nanometres))!;

    /// <summary>The longest of the layouts.</summary>
    /// <returns>The layout of the span that takes the longest, since that is what must be bought whatever the motif's
    /// position.</returns>
    /// <exception cref="OperationCanceledException">The search was cancelled.</exception>
    public FabricLayout LayOut()
    {
        Begin();
        MatchedBound bound = Bound();
        Refine(bound);
        SpanTrial longest = Longest;
        bound = IsKnown && longest.Bound.Length >= bound.Free.Length ? bound with { Free = longest.Bound } : bound;
        (ProofKind kind, string figures) = bound.Proof(longest.Length, _goal);
        (bool startsAnywhere, Length? shortest) = (Repeat.IsUnknownAlong, ShortestKnown());
        return new FabricLayout
        {
            Fabric = _fabric,
            Start = startsAnywhere ? _fabric.Repeat!.Length!.Value : Length.Zero,
            MotifX = longest.Span.From,
            MotifStart = startsAnywhere ? longest.MotifStart : Repeat.MotifY ?? Length.Zero,
            Length = longest.Length,
            LowerBound = Length.Min(bound.Length, longest.Length),
            FreeBound = Length.Min(bound.Free.Length, longest.Length),
            ProvenMinimal = kind != ProofKind.None,
            Proof = kind,
            ProofFigures = figures,
            Placements = [.. longest.Placements],
            Steps = Spent,
            ShortestKnown = shortest,
        };
    }

    // The first span says what each takes; where all of them would take too much, fewer and wider ones are laid.
    private void Begin()
    {
        var spans = Spans(MostSpans);
        long most = Math.Max(1, _mostOfBoxes / Math.Max(1, AddFrom(spans, 0, 1)));
        if (spans.Length > most)
        {
            var fewer = Spans((int)most);
            if (fewer.Length < spans.Length)
            {
                _steps = Spent;
                _trials.Clear();
                spans = fewer;
            }
        }

        AddFrom(spans, _trials.Count, spans.Length);
    }

    // Lays the spans from one number up to another; returns the steps of all trials.
    private long AddFrom((MotifSpan Span, SpanProblem Problem)[] spans, int from, int to)
    {
        int searches = spans.Sum(span => Math.Min(span.Problem.Starts.Length, _starts));
        foreach ((MotifSpan span, SpanProblem problem) in spans[from..to])
        {
            Add(span, problem, ForAll * searches);
        }

        return _trials.Sum(trial => trial.Steps);
    }

    private (MotifSpan Span, SpanProblem Problem)[] Spans(int most) =>
        [.. MotifSpans.Of(_fabric, _pieces, most).Select(span => (span, new SpanProblem(_fabric, _pieces, span)))];

    private SpanTrial Add(MotifSpan span, SpanProblem problem, int share)
    {
        var trial = new SpanTrial(span, problem, _goal);
        trial.Begin(_starts, _effort, _sharedBy * share, _cancellation);
        _trials.Add(trial);
        return trial;
    }

    // The longest is searched for again, and where that is in vain it is cut in two, each half of which leaves more of the width. A search
    // of many pieces is a pass at least, which may take more than its share: no round begins without steps.
    private void Refine(MatchedBound bound)
    {
        for (var round = 0; round < Rounds && Spent < _most && bound.Proof(Longest.Length, _goal).Kind == ProofKind.None; round++)
        {
            SpanTrial longest = Longest;
            if (!longest.IsRefined)
            {
                longest.Refine(_effort, _sharedBy * ForRound / (_trials.Count > 1 ? 1 : Rounds), _cancellation);
            }
            else if (longest.Span.Over > Length.Zero)
            {
                Halve(longest);
            }
            else
            {
                return;
            }
        }
    }

    private void Halve(SpanTrial whole)
    {
        Length half = Length.FromNanometres(whole.Span.Over.Nanometres / 2);
        MotifSpan[] halves = [new(whole.Span.From, half), new(whole.Span.From + half, whole.Span.Over - half)];
        _trials.Remove(whole);
        _steps += whole.Steps;
        foreach (MotifSpan span in halves)
        {
            var problem = new SpanProblem(_fabric, _pieces, span);
            SpanTrial trial = Add(span, problem, ForRound * halves.Length * 2 * Math.Min(problem.Starts.Length, _starts));
            trial.Refine(_effort, _sharedBy * ForRound * halves.Length * 2, _cancellation);
        }
    }

    // The worst position of all counts: what is bought must serve it.
    private MatchedBound Bound()
    {
        ColumnBound columns = _trials
            .Select(trial => ColumnBound.Of(_fabric, _pieces, trial.Span.Middle.From))
            .MaxBy(bound => bound.Length.Nanometres);
        return new MatchedBound(IsKnown ? Longest.Bound : Unmatched(), columns, Repeat);
    }

    // What bounds a layout at one start, or on less than the whole width, bounds none at another start or on all of it.
    private FreeBound Unmatched()
    {
        var free = new SpanProblem(_fabric, _pieces, null);
        StripLayout layout = Nester.Nest(free.At(_goal), _effort, _sharedBy * ForBound, _cancellation);
        _steps += layout.Steps;
        return FreeBound.Of(layout, free.Grid);
    }

    // What would do at the best of all positions; null where the motif is known.
    private Length? ShortestKnown()
    {
        if (IsKnown)
        {
            return null;
        }

        SpanTrial shortest = _trials.MinBy(trial => trial.Length.Nanometres)!;
        if (!Repeat.IsUnknownAcross)
        {
            return shortest.Length;
        }

        MotifSpan middle = shortest.Span.Middle;
        var problem = new SpanProblem(_fabric, _pieces, middle);
        var trial = new SpanTrial(middle, problem, _goal);
        trial.Begin(_starts, _effort, _sharedBy * ForShortest * Math.Min(problem.Starts.Length, _starts), _cancellation);
        _steps += trial.Steps;
        return Length.Min(trial.Length, shortest.Length);
    }
}
