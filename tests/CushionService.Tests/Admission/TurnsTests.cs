using CushionService.Access;
using CushionService.Admission;
using Microsoft.Extensions.Options;

namespace CushionService.Tests.Admission;

/// <summary>Callers take turns with the workers, none has them all, and streams come after calls.</summary>
public sealed class TurnsTests
{
    private static readonly TimeSpan Long = TimeSpan.FromSeconds(30);

    [Fact]
    public async Task A_caller_that_sends_one_order_is_second_whoever_sends_a_hundred()
    {
        using Turns turns = Of(workers: 1);
        List<string> order = [];
        Turn held = await turns.TakeAsync(Guest("greedy"), false, Long, default);
        Task[] greedy = [.. Enumerable.Range(0, 100).Select(_ => NoteAsync(turns, Guest("greedy"), order))];
        Task modest = NoteAsync(turns, Known("modest"), order);
        held.Dispose();
        await Task.WhenAll([.. greedy, modest]);

        Assert.InRange(order.IndexOf("modest"), 0, 1);
        Assert.Equal(101, order.Count);
    }

    [Theory]
    [InlineData(4, 3, 1, 2)]
    [InlineData(8, 6, 2, 4)]
    [InlineData(2, 2, 1, 1)]
    [InlineData(1, 1, 1, 1)]
    public async Task A_caller_has_its_share_of_the_workers_at_most(int workers, int known, int guest, int guests)
    {
        using Turns turns = Of(workers);

        Assert.Equal(known, await MostAsync(turns, _ => Known("shop")));
        Assert.Equal(guest, await MostAsync(turns, _ => Guest("203.0.113.1")));
        Assert.Equal(guests, await MostAsync(turns, number => Guest($"203.0.113.{number}")));
        Assert.Equal(workers, await MostAsync(turns, _ => Caller.Self));
    }

    [Fact]
    public async Task Streams_have_their_share_and_let_calls_pass()
    {
        using Turns turns = Of(workers: 4);
        Assert.Equal(2, await MostAsync(turns, number => Known($"batch {number}"), streamed: true));

        using Turns one = Of(workers: 1);
        List<string> order = [];
        Turn held = await one.TakeAsync(Caller.Self, false, Long, default);
        Task[] streamed = [.. Enumerable.Range(0, 4).Select(_ => NoteAsync(one, Known("batch"), order, streamed: true))];
        Task[] calls = [.. Enumerable.Range(0, 8).Select(number => NoteAsync(one, Caller.Self with { Name = $"call {number}" }, order))];
        held.Dispose();
        await Task.WhenAll([.. streamed, .. calls]);

        // The stream was first in the queue, and yet calls came before it.
        Assert.StartsWith("call", order[0], StringComparison.Ordinal);
        Assert.Equal(12, order.Count);
    }

    [Fact]
    public async Task A_call_waits_no_longer_than_it_may_and_a_stream_as_long_as_it_takes()
    {
        using Turns turns = Of(workers: 1);
        Turn held = await turns.TakeAsync(Caller.Self, false, Long, default);
        Task<Turn> streamed = turns.TakeAsync(Caller.Self, true, TimeSpan.FromMilliseconds(1), default).AsTask();
        using Turn late = await turns.TakeAsync(Caller.Self, false, TimeSpan.FromMilliseconds(30), default);

        Assert.False(late.IsGiven);
        Assert.False(streamed.IsCompleted);
        held.Dispose();
        using Turn given = await streamed;
        Assert.True(given.IsGiven);
        Assert.Equal(0, turns.Waiting);
    }

    [Fact]
    public async Task Who_leaves_while_it_waits_takes_no_turn()
    {
        using Turns turns = Of(workers: 1);
        using CancellationTokenSource gone = new();
        Turn held = await turns.TakeAsync(Caller.Self, false, Long, default);
        Task<Turn> left = turns.TakeAsync(Caller.Self, false, Long, gone.Token).AsTask();
        await gone.CancelAsync();

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => left);
        held.Dispose();
        using Turn next = await turns.TakeAsync(Caller.Self, false, Long, default);
        Assert.True(next.IsGiven);
    }

    [Fact]
    public async Task The_queue_has_an_end()
    {
        using Turns turns = Of(workers: 1, queue: 2);
        Turn held = await turns.TakeAsync(Caller.Self, false, Long, default);
        Task<Turn>[] waiting = [.. Enumerable.Range(0, 2).Select(_ => turns.TakeAsync(Caller.Self, false, Long, default).AsTask())];

        Assert.True(turns.IsFull(Caller.Self));
        Assert.False((await turns.TakeAsync(Caller.Self, false, Long, default)).IsGiven);
        held.Dispose();
        foreach (Task<Turn> one in waiting)
        {
            (await one).Dispose();
        }

        Assert.False(turns.IsFull(Caller.Self));
    }

    [Fact]
    public async Task A_caller_whose_own_queue_is_long_is_rejected_and_another_is_not()
    {
        using Turns turns = Of(workers: 2, longestWaitMs: 100);
        for (int order = 0; order < 100; order++)
        {
            turns.Took(TimeSpan.FromMilliseconds(200));
        }

        Turn held = await turns.TakeAsync(Guest("greedy"), false, Long, default);
        Task<Turn>[] waiting = [.. Enumerable.Range(0, 5).Select(_ => turns.TakeAsync(Guest("greedy"), false, Long, default).AsTask())];

        Assert.True(turns.IsFull(Guest("greedy")));
        Assert.False(turns.IsFull(Known("shop")));
        held.Dispose();
        foreach (Task<Turn> one in waiting)
        {
            (await one).Dispose();
        }
    }

    private static Turns Of(int workers, int queue = 1_000, int longestWaitMs = 60_000) =>
        new(
            Options.Create(
                new AdmissionOptions
                {
                    Workers = workers,
                    Queue = queue,
                    LongestWaitMs = longestWaitMs,
                }
            )
        );

    private static Caller Known(string name) => Caller.Self with { Name = name, IsKnown = true };

    private static Caller Guest(string name) => Caller.Self with { Name = name, IsGuest = true };

    // Takes a turn, writes it down, and gives it back.
    private static async Task NoteAsync(Turns turns, Caller caller, List<string> order, bool streamed = false)
    {
        using Turn turn = await turns.TakeAsync(caller, streamed, Long, default);
        Assert.True(turn.IsGiven);
        lock (order)
        {
            order.Add(caller.Name);
        }
    }

    // The turns that are given at the same time to twenty orders.
    private static async Task<int> MostAsync(Turns turns, Func<int, Caller> caller, bool streamed = false)
    {
        using CancellationTokenSource end = new();
        Task<Turn>[] asked =
        [
            .. Enumerable.Range(0, 20).Select(number => turns.TakeAsync(caller(number), streamed, Long, end.Token).AsTask()),
        ];
        await Task.Delay(50);
        Turn[] given = [.. asked.Where(one => one.IsCompletedSuccessfully).Select(one => one.Result)];
        await end.CancelAsync();
        foreach (Task<Turn> one in asked.Where(one => !one.IsCompletedSuccessfully))
        {
            await Assert.ThrowsAnyAsync<OperationCanceledException>(() => one);
        }

        Assert.All(given, turn => turn.Dispose());
        return given.Length;
    }
}
