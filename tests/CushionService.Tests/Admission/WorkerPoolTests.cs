using CushionService.Admission;
using Microsoft.Extensions.Options;

namespace CushionService.Tests.Admission;

/// <summary>The pool does one order a worker, calls first, and says when it is full.</summary>
public sealed class WorkerPoolTests
{
    [Fact]
    public async Task Work_is_done_on_a_worker_and_not_on_the_threads_that_read_requests()
    {
        using WorkerPool pool = Pool();

        Assert.StartsWith("worker", await pool.TryDo(_ => Thread.CurrentThread.Name, default)!, StringComparison.Ordinal);
        Assert.StartsWith("worker", await pool.DoInTurn(_ => Thread.CurrentThread.Name, default), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_pool_whose_queue_would_keep_a_call_waiting_is_full_until_the_queue_is_empty()
    {
        using WorkerPool pool = Pool(longestWaitMs: 20);
        // It learns what an order takes of late.
        for (int order = 0; order < 16; order++)
        {
            await pool.TryDo(_ => Busy(30), default)!;
        }

        Assert.False(pool.IsFull);
        using ManualResetEventSlim done = new();
        Task<int> held = pool.TryDo(_ => Held(done), default)!;
        Task<int>[] waiting = [.. Enumerable.Range(0, 3).Select(_ => pool.TryDo(_ => 1, default)!)];

        Assert.True(pool.IsFull);
        done.Set();
        await Task.WhenAll([held, .. waiting]);
        Assert.False(pool.IsFull);
    }

    [Fact]
    public async Task The_queue_has_an_end()
    {
        using WorkerPool pool = Pool(queue: 2);
        using ManualResetEventSlim done = new();
        using ManualResetEventSlim begun = new();
        Task<int> held = pool.TryDo(
            _ =>
            {
                begun.Set();
                return Held(done);
            },
            default
        )!;
        begun.Wait();

        Task<int>?[] tries = [.. Enumerable.Range(0, 4).Select(_ => pool.TryDo(_ => 1, default))];
        Assert.Equal([true, true, false, false], tries.Select(task => task is not null));
        done.Set();
        await Task.WhenAll([held, .. tries.OfType<Task<int>>()]);
    }

    [Fact]
    public async Task Streams_take_every_fourth_turn_while_calls_wait()
    {
        using WorkerPool pool = Pool();
        using ManualResetEventSlim done = new();
        List<string> order = [];
        Task held = pool.TryDo(_ => Held(done), default)!;
        List<Task<int>> all = [];
        for (int i = 0; i < 6; i++)
        {
            all.Add(pool.DoInTurn(_ => Note("stream"), default));
            all.Add(pool.TryDo(_ => Note("call"), default)!);
        }

        done.Set();
        await held;
        await Task.WhenAll(all);
        int first = order.IndexOf("stream");
        Assert.InRange(first, 2, 4);
        Assert.Equal(12, order.Count);
        Assert.Equal(4, order.IndexOf("stream", first + 1) - first);

        int Note(string what)
        {
            order.Add(what);
            return 0;
        }
    }

    [Fact]
    public async Task Work_whose_caller_has_gone_is_not_begun()
    {
        using WorkerPool pool = Pool();
        using ManualResetEventSlim done = new();
        using CancellationTokenSource gone = new();
        bool begun = false;
        Task<int> held = pool.TryDo(_ => Held(done), default)!;
        Task<int> left = pool.TryDo(_ => Begin(), gone.Token)!;
        await gone.CancelAsync();
        done.Set();

        await held;
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => left);
        Assert.False(begun);

        int Begin()
        {
            begun = true;
            return 0;
        }
    }

    [Fact]
    public async Task A_cancelled_order_cancels_no_other_of_its_worker()
    {
        using WorkerPool pool = Pool();
        using CancellationTokenSource caller = new();

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => pool.TryDo(Forever, default, TimeSpan.FromMilliseconds(50))!);
        Assert.False(await pool.TryDo(cancellation => cancellation.IsCancellationRequested, default, TimeSpan.FromMinutes(1))!);

        Task<int> given = pool.TryDo(Forever, caller.Token)!;
        await caller.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => given);
        Assert.False(await pool.TryDo(cancellation => cancellation.IsCancellationRequested, default)!);

        static int Forever(CancellationToken cancellation)
        {
            cancellation.WaitHandle.WaitOne();
            cancellation.ThrowIfCancellationRequested();
            return 0;
        }
    }

    [Fact]
    public async Task A_caller_that_cancels_after_its_answer_cancels_no_order_that_follows()
    {
        using WorkerPool pool = Pool();
        for (int order = 0; order < 1_000; order++)
        {
            using CancellationTokenSource caller = new();
            Assert.Equal(order, await pool.TryDo(_ => order, caller.Token, TimeSpan.FromMinutes(1))!);
            Task<bool> next = pool.TryDo(cancellation => cancellation.IsCancellationRequested, default)!;
            await caller.CancelAsync();
            Assert.False(await next);
        }
    }

    [Fact]
    public async Task The_time_of_an_order_runs_while_it_waits_but_that_of_a_stream_from_its_turn()
    {
        using WorkerPool pool = Pool();
        using ManualResetEventSlim done = new();
        Task<int> held = pool.TryDo(_ => Held(done), default)!;
        Task<int> call = pool.TryDo(_ => 1, default, TimeSpan.FromMilliseconds(50))!;
        Task<int> streamed = pool.DoInTurn(_ => 1, default, TimeSpan.FromSeconds(30));
        await Task.Delay(100);
        done.Set();

        await held;
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => call);
        Assert.Equal(1, await streamed);
    }

    private static WorkerPool Pool(int longestWaitMs = 60_000, int queue = 100) =>
        new(
            Options.Create(
                new AdmissionOptions
                {
                    Workers = 1,
                    LongestWaitMs = longestWaitMs,
                    Queue = queue,
                }
            )
        );

    private static int Held(ManualResetEventSlim done)
    {
        done.Wait();
        return 0;
    }

    private static int Busy(int milliseconds)
    {
        Thread.Sleep(milliseconds);
        return 0;
    }
}
