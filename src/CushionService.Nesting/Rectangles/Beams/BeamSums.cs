using CushionService.Nesting.Rectangles.PerfectBoxes;

namespace CushionService.Nesting.Rectangles.Beams;

/// <summary>What the copies left of each state of a layer add up to, along both axes: a stretch is filled at most to the greatest sum that
/// fits it, and what is beyond is lost.</summary>
internal sealed class BeamSums
{
    /// <summary>The longest stretch that is counted, in units. What is longer is taken as filled: on a strip that is wider itself, looking
    /// ahead would see little.</summary>
    public const int MostSum = 1024;

    // Sums that are counted anew in the time of a step.
    private const int SumsPerStep = 8;
    private readonly SumCounts _acrossStrip;
    private readonly SumCounts _alongStrip;
    private SumCounts _rows;
    private SumCounts _columns;

    /// <summary>Sizes everything once.</summary>
    /// <param name="kinds">All copies; narrow enough for tables.</param>
    /// <param name="longest">Length of the longest box, in units.</param>
    /// <param name="states">The most states of a layer.</param>
    public BeamSums(BeamKinds kinds, long longest, int states)
    {
        var (across, along, turns) = (kinds.Grid.Across, kinds.Grid.Along, kinds.Set.Turns);
        var (wide, high) = Limits(kinds, longest);
        _acrossStrip = new SumCounts(across, Other(across, along), kinds.Set.Count, wide, states);
        _alongStrip = new SumCounts(along, Other(along, across), kinds.Set.Count, high, states);
        (_rows, _columns) = (_acrossStrip, _alongStrip);
        StepsToWrite = StepsFor(kinds, longest);

        int[] Other(int[] extents, int[] turned) => [.. extents.Select((extent, kind) => turns[kind] ? turned[kind] : extent)];
    }

    /// <summary>Steps of writing one state.</summary>
    public int StepsToWrite { get; }

    /// <summary>The same, before anything is sized.</summary>
    /// <param name="kinds">All copies; narrow enough for tables.</param>
    /// <param name="longest">Length of the longest box, in units.</param>
    public static int StepsFor(BeamKinds kinds, long longest)
    {
        var (wide, high) = Limits(kinds, longest);
        return 1 + (wide + high) / SumsPerStep;
    }

    /// <summary>Makes the first state that of an empty box.</summary>
    /// <param name="sideways">Whether the box's axes are exchanged.</param>
    public void Begin(bool sideways)
    {
        (_rows, _columns) = sideways ? (_alongStrip, _acrossStrip) : (_acrossStrip, _alongStrip);
        _rows.Begin();
        _columns.Begin();
    }

    /// <summary>Writes a state: its parent's, less a copy.</summary>
    /// <param name="state">The state that is written.</param>
    /// <param name="from">Sums of the layer before.</param>
    /// <param name="parent">Its state.</param>
    /// <param name="kind">Kind of the copy.</param>
    public void Write(int state, BeamSums from, int parent, int kind)
    {
        _acrossStrip.Write(state, from._acrossStrip, parent, kind);
        _alongStrip.Write(state, from._alongStrip, parent, kind);
    }

    /// <summary>Makes a state the same as another one of the layer.</summary>
    public void Copy(int state, int from)
    {
        _acrossStrip.Copy(state, from);
        _alongStrip.Copy(state, from);
    }

    /// <summary>Width of a stretch that rows cannot fill.</summary>
    public long LostAcross(int state, long extent) => extent <= _rows.Limit ? extent - _rows.Greatest(state, (int)extent) : 0;

    /// <summary>Height of a stretch that columns cannot fill.</summary>
    public long LostAlong(int state, long room) => room <= _columns.Limit ? room - _columns.Greatest(state, (int)room) : 0;

    /// <summary>The greatest sums across and along the strip.</summary>
    private static (int Wide, int High) Limits(BeamKinds kinds, long longest) =>
        ((int)Math.Min(kinds.Width, MostSum), (int)Math.Min(longest, MostSum));
}
