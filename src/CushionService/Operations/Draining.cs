using Microsoft.Extensions.Options;

namespace CushionService.Operations;

/// <summary>Ends the service without losing a call. On SIGTERM the service first reports that it is not ready, goes on
/// answering while the balancers learn of it, and only then stops listening and finishes the calls that it
/// has.</summary>
/// <param name="options">Has the length of the notice.</param>
/// <param name="log">Says that the end has begun.</param>
internal sealed partial class Draining(IOptions<LifetimeOptions> options, ILogger<Draining> log) : IHostedLifecycleService
{
    private readonly TimeSpan _notice = TimeSpan.FromSeconds(options.Value.NoticeSeconds);

    /// <summary>Whether the service is ending.</summary>
    public bool Begun { get; private set; }

    /// <summary>Reports the end, and waits for the notice. A second signal ends the wait.</summary>
    /// <param name="cancellationToken">Cancelled by a second signal, or when the time for the whole end is over.</param>
    public async Task StoppingAsync(CancellationToken cancellationToken)
    {
        Begun = true;
        LogDraining(log, _notice.TotalSeconds);
        await Task.Delay(_notice, cancellationToken).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
    }

    /// <inheritdoc/>
    public Task StartAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    /// <inheritdoc/>
    public Task StartingAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    /// <inheritdoc/>
    public Task StartedAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    /// <inheritdoc/>
    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    /// <inheritdoc/>
    public Task StoppedAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    [LoggerMessage(LogLevel.Information, "No longer ready; still answering for {Seconds} seconds")]
    private static partial void LogDraining(ILogger log, double seconds);
}
