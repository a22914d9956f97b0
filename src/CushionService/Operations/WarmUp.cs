using System.Text.Json;
using CushionService.Desk;
using CushionService.Json;
using CushionService.Rest.OpenApi;

namespace CushionService.Operations;

/// <summary>Has an order answered some times before the service listens. Without it the first callers would wait for
/// the compiler, and those behind them would be rejected while the queue is full.</summary>
internal sealed class WarmUp(IServiceProvider services) : IHostedLifecycleService
{
    // After thirty calls the runtime compiles a method again, optimized.
    private const int Times = 40;

    private static int _done;

    /// <summary>Answers the order, once in the process: what is compiled is compiled for all hosts in it.</summary>
    public Task StartingAsync(CancellationToken cancellationToken)
    {
        if (Interlocked.Exchange(ref _done, 1) == 0)
        {
            byte[] order = JsonSerializer.SerializeToUtf8Bytes(Examples.Nook, ContractJson.Options);
            try
            {
                OrderDesk desk = services.GetRequiredService<OrderDesk>();
                for (int time = 0; time < Times; time++)
                {
                    _ = JsonSerializer.SerializeToUtf8Bytes(
                        desk.Handle(OrderText.Parse(order), Purposes.Yardage, cancellationToken).Answer,
                        ContractJson.Options
                    );
                }
            }
            catch (InvalidOperationException)
            {
                // A desk that fails is reported by the readiness check.
            }
            catch (OperationCanceledException)
            {
                // A service that has to end while it starts has nobody to warm up for.
            }
        }

        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    public Task StartAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    /// <inheritdoc/>
    public Task StartedAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    /// <inheritdoc/>
    public Task StoppingAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    /// <inheritdoc/>
    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    /// <inheritdoc/>
    public Task StoppedAsync(CancellationToken cancellationToken) => Task.CompletedTask;
}
