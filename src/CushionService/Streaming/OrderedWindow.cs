using System.Threading.Channels;

namespace CushionService.Streaming;

/// <summary>Answers a stream in its own order. It takes no more than a small window ahead of what is written, so that neither a fast caller
/// nor a slow one makes memory grow, and works on two entries at the same time.</summary>
internal static class OrderedWindow
{
    /// <summary>Entries taken and not yet written, at most.</summary>
    public const int Size = 4;

    private const int Workers = 2;

    /// <summary>Answers every entry.</summary>
    /// <param name="entries">Asked for its next entry only when the window has room.</param>
    /// <param name="answer">Works on one entry; its exceptions end the stream.</param>
    /// <param name="write">Writes one answer; told whether the next is ready too, so that it need not flush yet.</param>
    /// <param name="cancellation">Ends the stream.</param>
    public static async Task AnswerAsync<TEntry, TAnswer>(
        IAsyncEnumerable<TEntry> entries,
        Func<TEntry, CancellationToken, Task<TAnswer>> answer,
        Func<TAnswer, bool, CancellationToken, ValueTask> write,
        CancellationToken cancellation
    )
    {
        using CancellationTokenSource ending = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        using SemaphoreSlim room = new(Size);
        using SemaphoreSlim workers = new(Workers);
        Channel<Task<TAnswer>> underway = Channel.CreateUnbounded<Task<TAnswer>>(
            new UnboundedChannelOptions { SingleReader = true, SingleWriter = true }
        );
        Task taking = TakeAsync(ending.Token);
        try
        {
            await foreach (Task<TAnswer> next in underway.Reader.ReadAllAsync(ending.Token))
            {
                TAnswer done = await next;
                bool more = underway.Reader.TryPeek(out Task<TAnswer>? following) && following.IsCompleted;
                await write(done, more, ending.Token);
                room.Release();
            }
        }
        finally
        {
            await ending.CancelAsync();
            await taking;
            while (underway.Reader.TryRead(out Task<TAnswer>? left))
            {
                await ((Task)left).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
            }
        }

        // What ends the taking is told through the channel, after the answers to what was taken before.
        async Task TakeAsync(CancellationToken token)
        {
            Exception? fault = null;
            try
            {
                await using IAsyncEnumerator<TEntry> source = entries.GetAsyncEnumerator(token);
                await room.WaitAsync(token);
                while (await source.MoveNextAsync())
                {
                    TEntry entry = source.Current;
                    underway.Writer.TryWrite(Task.Run(() => WorkAsync(entry, token), CancellationToken.None));
                    await room.WaitAsync(token);
                }
            }
            catch (Exception any)
            {
                fault = any;
            }

            underway.Writer.Complete(fault);
        }

        async Task<TAnswer> WorkAsync(TEntry entry, CancellationToken token)
        {
            await workers.WaitAsync(token);
            try
            {
                return await answer(entry, token);
            }
            finally
            {
                workers.Release();
            }
        }
    }
}
