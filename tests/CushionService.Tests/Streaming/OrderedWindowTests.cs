using System.Runtime.CompilerServices;
using CushionService.Streaming;

namespace CushionService.Tests.Streaming;

/// <summary>A window keeps the order, and keeps its distance.</summary>
public sealed class OrderedWindowTests
{
    private int _taken;
    private int _widest;

    [Fact]
    public async Task Answers_come_in_order_however_long_each_takes()
    {
        List<int> written = [];
        await OrderedWindow.AnswerAsync(
            CountAsync(300),
            (number, _) =>
            {
                Thread.SpinWait(number % 7 * 20_000);
                return Task.FromResult(number);
            },
            (number, _, _) =>
            {
                written.Add(number);
                return ValueTask.CompletedTask;
            },
            CancellationToken.None
        );

        Assert.Equal(Enumerable.Range(0, 300), written);
    }

    [Fact]
    public async Task A_slow_reader_holds_the_taking_back()
    {
        int written = 0;
        await OrderedWindow.AnswerAsync(
            CountAsync(60),
            (number, _) => Task.FromResult(number),
            async (_, _, cancellation) =>
            {
                await Task.Delay(5, cancellation);
                _widest = Math.Max(_widest, _taken - written);
                written++;
            },
            CancellationToken.None
        );

        Assert.Equal(60, written);
        Assert.InRange(_widest, 2, OrderedWindow.Size);
    }

    [Fact]
    public async Task No_more_than_two_are_worked_on_at_the_same_time()
    {
        int working = 0,
            most = 0;
        await OrderedWindow.AnswerAsync(
            CountAsync(60),
            async (number, cancellation) =>
            {
                int now = Interlocked.Increment(ref working);
                InterlockedMax(ref most, now);
                // Holds no thread, so that a busy machine still starts the second beside the first.
                await Task.Delay(20, cancellation);
                Interlocked.Decrement(ref working);
                return number;
            },
            (_, _, _) => ValueTask.CompletedTask,
            CancellationToken.None
        );

        Assert.Equal(2, most);
    }

    [Fact]
    public async Task A_reader_who_goes_away_ends_the_taking()
    {
        using CancellationTokenSource gone = new();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() =>
            OrderedWindow.AnswerAsync(
                CountAsync(int.MaxValue),
                (number, _) => Task.FromResult(number),
                async (number, _, _) =>
                {
                    if (number == 20)
                    {
                        await gone.CancelAsync();
                    }
                },
                gone.Token
            )
        );

        Assert.InRange(_taken, 20, 21 + OrderedWindow.Size);
    }

    [Fact]
    public async Task A_writer_that_fails_ends_the_taking_and_tells_why()
    {
        await Assert.ThrowsAsync<IOException>(() =>
            OrderedWindow.AnswerAsync(
                CountAsync(int.MaxValue),
                (number, _) => Task.FromResult(number),
                (_, _, _) => throw new IOException("gone"),
                CancellationToken.None
            )
        );

        Assert.InRange(_taken, 1, OrderedWindow.Size);
    }

    [Fact]
    public async Task A_source_that_fails_is_told_after_the_answers_to_what_came_before()
    {
        int written = 0;
        await Assert.ThrowsAsync<IOException>(() =>
            OrderedWindow.AnswerAsync(
                CountAsync(10, new IOException("cut")),
                (number, _) => Task.FromResult(number),
                (_, _, _) =>
                {
                    written++;
                    return ValueTask.CompletedTask;
                },
                CancellationToken.None
            )
        );

        Assert.Equal(10, written);
    }

    private async IAsyncEnumerable<int> CountAsync(
        int count,
        Exception? end = null,
        [EnumeratorCancellation] CancellationToken cancellation = default
    )
    {
        for (int number = 0; number < count; number++)
        {
            cancellation.ThrowIfCancellationRequested();
            await Task.Yield();
            Interlocked.Increment(ref _taken);
            yield return number;
        }

        if (end is not null)
        {
            throw end;
        }
    }

    private static void InterlockedMax(ref int most, int now)
    {
        int seen;
        while ((seen = Volatile.Read(ref most)) < now && Interlocked.CompareExchange(ref most, now, seen) != seen) { }
    }
}
