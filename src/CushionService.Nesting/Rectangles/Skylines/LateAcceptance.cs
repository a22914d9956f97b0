namespace CushionService.Nesting.Rectangles.Skylines;

/// <summary>The memory of late acceptance (Burke and Bykov 2017): what a search had reached a number of moves ago, below which a move is
/// taken though it makes things worse.</summary>
internal sealed class LateAcceptance
{
    // Longest memory, in moves.
    private const int Most = 4096;
    private long[] _history = [];
    private int _length;
    private int _turn;

    /// <summary>What was reached as many moves ago as the memory is long.</summary>
    public long Late => _history[_turn];

    /// <summary>Begins a search.</summary>
    /// <param name="start">What the search starts from.</param>
    /// <param name="moves">Length of the memory, in moves; kept within 1 and 4096.</param>
    public void Begin(long start, long moves)
    {
        // Most small orders are done before they need a memory.
        _history = _history.Length == 0 ? new long[Most] : _history;
        (_length, _turn) = ((int)Math.Clamp(moves, 1, Most), 0);
        Array.Fill(_history, start, 0, _length);
    }

    /// <summary>Notes what a move has reached.</summary>
    public void Note(long reached)
    {
        _history[_turn] = reached;
        Skip();
    }

    /// <summary>Passes over a move that was not made.</summary>
    public void Skip() => _turn = _turn + 1 == _length ? 0 : _turn + 1;
}
