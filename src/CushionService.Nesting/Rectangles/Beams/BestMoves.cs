namespace CushionService.Nesting.Rectangles.Beams;

/// <summary>The few best moves of one state, the best first: a list that is sized once and sorted by insertion.</summary>
internal sealed class BestMoves
{
    /// <summary>Candidates of one state that compete in the layer; more find no more.</summary>
    public const int Most = 4;

    private readonly double[] _scores = new double[Most];
    private readonly int[] _moves = new int[Most];

    /// <summary>How many are kept.</summary>
    public int Count { get; private set; }

    /// <summary>Score, the lower the better, and code of a move that is kept.</summary>
    public (double Score, int Move) this[int index] => (_scores[index], _moves[index]);

    /// <summary>Forgets all.</summary>
    public void Clear() => Count = 0;

    /// <summary>Keeps a move if it is among the best; of equals, the one that was there first.</summary>
    /// <param name="score">The lower the better.</param>
    /// <param name="move">Its <see cref="BeamMove.Code"/>.</param>
    public void Add(double score, int move)
    {
        if (Count == Most && score >= _scores[Most - 1])
        {
            return;
        }

        int at = Math.Min(Count, Most - 1);
        for (; at > 0 && _scores[at - 1] > score; at--)
        {
            (_scores[at], _moves[at]) = (_scores[at - 1], _moves[at - 1]);
        }

        (_scores[at], _moves[at]) = (score, move);
        Count = Math.Min(Count + 1, Most);
    }
}
