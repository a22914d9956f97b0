using CushionService.Admission;

namespace CushionService.Tests.Admission;

/// <summary>Puts work of tests into the queues of a pool.</summary>
internal static class TestJobs
{
    /// <summary>The answer of a call's work; null when the queue is full.</summary>
    public static Task<T>? TryDo<T>(
        this WorkerPool pool,
        Func<CancellationToken, T> work,
        CancellationToken cancellation,
        TimeSpan? time = null
    )
    {
        TestJob<T> job = new(work, time ?? Timeout.InfiniteTimeSpan, inTurn: false, cancellation);
        return pool.TryEnqueue(job) ? job.Done : null;
    }

    /// <summary>The answer of a stream's work.</summary>
    public static Task<T> DoInTurn<T>(
        this WorkerPool pool,
        Func<CancellationToken, T> work,
        CancellationToken cancellation,
        TimeSpan? time = null
    )
    {
        TestJob<T> job = new(work, time ?? Timeout.InfiniteTimeSpan, inTurn: true, cancellation);
        Assert.True(pool.TryEnqueue(job));
        return job.Done;
    }
}
