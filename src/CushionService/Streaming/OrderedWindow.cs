using System.Threading.Channels;

namespace CushionService.Streaming;

/// <summary>Answers a stream in its own order. Entries are read only a small window ahead of the answers that are
/// written, so that neither a fast caller nor a slow one makes memory grow, and two entries are worked on at the same
/// time.</summary>
internal static class OrderedWindow
{
    /// <summary>Entries read and not yet answered, at most. One is being written and two worked on, so that the next is
    /// at hand.</summary>
    public const int Size = 4;

    // Half of the window: more would take the processors of a small machine from the calls.
    private const int Workers = 2;

    /// <summary>Answers every entry.</summary>
    /// <param name="entries">Asked for its next entry only when the window has room.</param>
    /// <param name="answer">Works on one entry; its exceptions end the stream.</param>
    /// <param name="write">Writes one answer. The flag says that the next is ready too, so that this one need not be
    /// flushed yet.</param>
    /// <param name="cancellation">Ends the stream.</param>
    /// <param name="workers">Entries worked on at the same time; twice as many are read and not yet answered.</param>
    /// <exception cref="OperationCanceledException">The stream was cancelled.</exception>
    /// <typeparam name="TEntry">What is read.</typeparam>
    /// <typeparam name="TAnswer">What is written, one for each entry and in the order of the entries.</typeparam>
    /// <remarks>Two counts bound it: the window, how many entries are read and not yet written, and the workers, how many
    /// of those are worked on. The first keeps memory in bounds when the reader of the answers is slow, the second the
    /// processors.</remarks>
    public static async Task AnswerAsync<TEntry, TAnswer>(
        IAsyncEnumerable<TEntry> entries,
        Func<TEntry, CancellationToken, Task<TAnswer>> answer,
        Func<TAnswer, bool, CancellationToken, ValueTask> write,
        CancellationToken cancellation,
        int workers = Workers
    )
    {
        using Stream<TEntry, TAnswer> stream = new(entries, answer, write, workers);
        await stream.AnswerAsync(cancellation);
    }

    private sealed class Stream<TEntry, TAnswer>(
        IAsyncEnumerable<TEntry> entries,
        Func<TEntry, CancellationToken, Task<TAnswer>> answer,
        Func<TAnswer, bool, CancellationToken, ValueTask> write,
        int workers
    ) : IDisposable
    {
        private readonly SemaphoreSlim _window = new(2 * workers);
        private readonly SemaphoreSlim _free = new(workers);
        private readonly Channel<Task<TAnswer>> _underway = Channel.CreateUnbounded<Task<TAnswer>>(
            new UnboundedChannelOptions { SingleReader = true, SingleWriter = true }
        );

        public async Task AnswerAsync(CancellationToken cancellation)
        {
            using var linked = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
            Task reading = ReadAsync(linked.Token);
            try
            {
                await foreach (Task<TAnswer> next in _underway.Reader.ReadAllAsync(linked.Token))
                {
                    TAnswer done = await next;
                    // The answer that follows may go out with this one.
                    bool more = _underway.Reader.TryPeek(out Task<TAnswer>? following) && following.IsCompleted;
                    await write(done, more, linked.Token);
                    _window.Release();
                }
            }
            finally
            {
                // Nothing of the stream runs on once this method has returned.
                await linked.CancelAsync();
                await reading;
                while (_underway.Reader.TryRead(out Task<TAnswer>? left))
                {
                    await ((Task)left).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
                }
            }
        }

        public void Dispose()
        {
            _window.Dispose();
            _free.Dispose();
        }

        // Runs beside the loop above. Its exception goes through the channel, behind the answers to the entries before it.
        private async Task ReadAsync(CancellationToken token)
        {
            Exception? exception = null;
            try
            {
                await using IAsyncEnumerator<TEntry> source = entries.GetAsyncEnumerator(token);
                await _window.WaitAsync(token);
                while (await source.MoveNextAsync())
                {
                    TEntry entry = source.Current;
                    // Unbounded, so it never refuses: the window has made sure of the bound before.
                    _underway.Writer.TryWrite(Task.Run(() => WorkAsync(entry, token), CancellationToken.None));
                    await _window.WaitAsync(token);
                }
            }
            catch (Exception caught)
            {
                exception = caught;
            }

            _underway.Writer.Complete(exception);
        }

        // At most as many entries as there are workers pass at the same time. When the stream is cancelled, none waits on.
        private async Task<TAnswer> WorkAsync(TEntry entry, CancellationToken token)
        {
            await _free.WaitAsync(token);
            try
            {
                return await answer(entry, token);
            }
            finally
            {
                _free.Release();
            }
        }
    }
}
