using Microsoft.Extensions.Options;
using StackExchange.Redis;

namespace CushionService.Admission;

/// <summary>Token buckets that all instances of the service share, in Redis. Where Redis does not answer, the caller falls back on its
/// own: calls are admitted by limits of this instance, and none waits.</summary>
internal sealed partial class SharedBuckets : IAsyncDisposable
{
    // Refills by the clock of Redis, so that the clocks of instances do not matter. Returns whether there was a token, and how many
    // whole ones are left.
    // A script runs whole before any other command of any instance, so no token is given twice.
    private const string Script = """
        local time = redis.call('TIME')
        local now = time[1] * 1000000 + time[2]
        local rate, burst = tonumber(ARGV[1]), tonumber(ARGV[2])
        local kept = redis.call('HMGET', KEYS[1], 'at', 'left')
        local left = burst
        if kept[1] then left = math.min(burst, tonumber(kept[2]) + (now - tonumber(kept[1])) * rate / 1000000) end
        local taken = 0
        if left >= 1 then left = left - 1; taken = 1 end
        redis.call('HSET', KEYS[1], 'at', now, 'left', left)
        redis.call('PEXPIRE', KEYS[1], math.ceil(burst / rate * 1000) + 1000)
        return { taken, math.floor(left) }
        """;

    // A call waits no longer than this for Redis. After a failure Redis is not asked for a while.
    private const int PatienceMs = 250;
    private static readonly TimeSpan Pause = TimeSpan.FromSeconds(1);

    private readonly ILogger<SharedBuckets> _log;
    private readonly TimeProvider _clock;
    private readonly Task<ConnectionMultiplexer> _connection;
    private long _askAgain;
    private volatile bool _away;

    /// <summary>Begins to connect; the service starts without Redis too.</summary>
    /// <param name="options">Where Redis is.</param>
    /// <param name="clock">Measures the pause after a failure.</param>
    /// <param name="log">Gets a line when Redis goes away, and one when it is back.</param>
    public SharedBuckets(IOptions<AdmissionOptions> options, TimeProvider clock, ILogger<SharedBuckets> log)
    {
        (_log, _clock) = (log, clock);
        ConfigurationOptions redis = ConfigurationOptions.Parse(options.Value.Redis!);
        // Neither a start without Redis nor a lost connection may throw or queue: a call that waits for Redis is slower
        // than one that the limits of this instance admit.
        redis.AbortOnConnectFail = false;
        redis.AsyncTimeout = PatienceMs;
        redis.BacklogPolicy = BacklogPolicy.FailFast;
        redis.ReconnectRetryPolicy = new LinearRetry((int)Pause.TotalMilliseconds);
        redis.ClientName = "cushionservice";
        _connection = ConnectionMultiplexer.ConnectAsync(redis);
    }

    /// <summary>Whether the limits are those of this instance, since Redis does not answer.</summary>
    public bool IsAway => _away;

    /// <summary>Takes a token.</summary>
    /// <param name="name">The caller's name.</param>
    /// <param name="rate">Tokens that come back each second.</param>
    /// <param name="burst">Tokens that the bucket holds.</param>
    /// <returns>Whether there was a token, and how many are left; null when Redis does not answer.</returns>
    public async ValueTask<(bool Taken, long Left)?> TakeAsync(string name, int rate, int burst)
    {
        if (!_connection.IsCompletedSuccessfully || _clock.GetTimestamp() < Volatile.Read(in _askAgain))
        {
            return null;
        }

        try
        {
            RedisResult result = await _connection
                .Result.GetDatabase()
                .ScriptEvaluateAsync(Script, [$"cushionservice:calls:{name}:{rate}:{burst}"], [rate, burst]);
            if (_away)
            {
                _away = false;
                LogBack(_log);
            }

            return ((long)result[0] == 1, (long)result[1]);
        }
        catch (Exception exception) when (exception is RedisException or TimeoutException)
        {
            Volatile.Write(ref _askAgain, _clock.GetTimestamp() + (long)(Pause.TotalSeconds * _clock.TimestampFrequency));
            if (!_away)
            {
                _away = true;
                LogAway(_log, exception.GetType().Name);
            }

            return null;
        }
    }

    /// <summary>Closes the connection.</summary>
    public async ValueTask DisposeAsync()
    {
        if (_connection.IsCompletedSuccessfully)
        {
            await _connection.Result.DisposeAsync();
        }
    }

    [LoggerMessage(LogLevel.Warning, "Redis does not answer ({Reason}): the limits of callers are those of this instance alone")]
    private static partial void LogAway(ILogger log, string reason);

    [LoggerMessage(LogLevel.Information, "Redis answers again: the limits of callers are shared")]
    private static partial void LogBack(ILogger log);
}
