namespace CushionService.Operations;

/// <summary>The way out: told to end, the service first says that it is no longer ready, goes on answering while the balancers learn of it,
/// and only then stops hearing and finishes what it is at.</summary>
internal sealed partial class Draining(IConfiguration configuration, ILogger<Draining> log) : IHostedLifecycleService
{
    // Longer than a balancer takes to see an instance as not ready; a person at a terminal does not wait.
    private readonly TimeSpan _notice = TimeSpan.FromSeconds(configuration.GetValue("Lifetime:NoticeSeconds", 0.0));

    /// <summary>Whether the service is on its way out.</summary>
    public bool Begun { get; private set; }

    public async Task StoppingAsync(CancellationToken cancellationToken)
    {
        Begun = true;
        LogDraining(log, _notice.TotalSeconds);
        await Task.Delay(_notice, cancellationToken).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
    }

    public Task StartAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StartingAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StartedAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StoppedAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    [LoggerMessage(LogLevel.Information, "No longer ready; still answering for {Seconds} seconds")]
    private static partial void LogDraining(ILogger log, double seconds);
}
