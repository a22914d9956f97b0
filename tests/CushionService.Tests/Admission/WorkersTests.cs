using CushionService.Admission;

namespace CushionService.Tests.Admission;

/// <summary>The queue before the workers, and their threads.</summary>
public sealed class WorkersTests
{
    [Fact]
    public void A_streamed_order_lets_three_calls_pass_and_no_more()
    {
        using Workers workers = new(1);
        WorkerRequest held = Taken(workers);
        List<string> served = [];
        using CountdownEvent all = new(7);
        Queue(workers, streamed: true, "stream", served, all);
        for (int call = 1; call <= 6; call++)
        {
            Queue(workers, streamed: false, $"call {call}", served, all);
        }

        held.Dispose();

        Assert.True(all.Wait(TimeSpan.FromSeconds(30)));
        Assert.Equal(["call 1", "call 2", "call 3", "stream", "call 4", "call 5", "call 6"], served);
    }

    [Fact]
    public void Orders_that_wait_are_worked_on_by_the_same_thread_one_after_the_other()
    {
        using Workers workers = new(1);
        WorkerRequest held = Taken(workers);
        List<string> threads = [];
        using CountdownEvent all = new(20);
        for (int order = 0; order < 20; order++)
        {
            Queue(workers, streamed: false, null, threads, all);
        }

        held.Dispose();

        Assert.True(all.Wait(TimeSpan.FromSeconds(30)));
        Assert.Equal(["worker 1"], threads.Distinct());
    }

    [Fact]
    public async Task A_wait_ends_at_once_though_every_worker_is_at_a_long_order()
    {
        using Workers workers = new(1);
        using WorkerRequest held = Taken(workers);
        using CancellationTokenSource gone = new();
        WorkerRequest request = workers.Request(streamed: false, out bool waits);
        ValueTask<WorkerRequest?> waiting = request.WaitAsync(gone.Token);
        await gone.CancelAsync();

        Assert.True(waits);
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => waiting.AsTask().WaitAsync(TimeSpan.FromSeconds(30)));
    }

    [Fact]
    public async Task Who_left_keeps_no_worker_from_the_next()
    {
        using Workers workers = new(1);
        WorkerRequest held = Taken(workers);
        workers.Request(streamed: false, out _).TrySetCanceled();
        WorkerRequest next = workers.Request(streamed: false, out _);
        held.Dispose();

        Assert.Same(next, await next.Task.WaitAsync(TimeSpan.FromSeconds(30)));
        next.Dispose();
        // Given back twice, it is still one worker.
        next.Dispose();
        _ = workers.Request(streamed: false, out bool first);
        _ = workers.Request(streamed: false, out bool second);
        Assert.False(first);
        Assert.True(second);
    }

    [Fact]
    public async Task When_the_service_ends_who_waits_gets_none()
    {
        Workers workers = new(1);
        WorkerRequest held = Taken(workers);
        WorkerRequest waiting = workers.Request(streamed: true, out _);
        workers.Dispose();
        held.Dispose();

        Assert.Null(await waiting.Task.WaitAsync(TimeSpan.FromSeconds(30)));
        Assert.Null(await workers.Request(streamed: false, out _).Task);
    }

    private static WorkerRequest Taken(Workers workers)
    {
        WorkerRequest request = workers.Request(streamed: false, out bool waits);
        Assert.False(waits);
        Assert.True(request.Task.Wait(TimeSpan.FromSeconds(30)));
        return request;
    }

    // Writes down its name, or that of the thread that serves it.
    private static void Queue(Workers workers, bool streamed, string? name, List<string> served, CountdownEvent all) =>
        workers
            .Request(streamed, out _)
            .Task.ContinueWith(
                given =>
                {
                    served.Add(name ?? Thread.CurrentThread.Name ?? "");
                    given.Result!.Dispose();
                    all.Signal();
                },
                CancellationToken.None,
                TaskContinuationOptions.ExecuteSynchronously,
                TaskScheduler.Default
            );
}
