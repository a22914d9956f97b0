using System.Text.Json;
using CushionService.Contract.Orders;
using CushionService.Desk;
using CushionService.Json;
using CushionService.Nesting;

namespace CushionService.Operations;

/// <summary>Has an order answered some times before the service listens. Without it the first callers would wait for
/// the compiler, and those behind them would be rejected while the queue is full.</summary>
/// <remarks>The order has rectangles in a print and outlines in a plain fabric whose grain is open, so that it goes through every
/// search.</remarks>
internal sealed class WarmUp(IServiceProvider services) : IHostedLifecycleService
{
    // After thirty calls the runtime compiles a method again, and after as many more optimized. What a search repeats comes to that in one
    // call; what is called once for an order does not, and takes little. A harder search has parts that a quick one does without.
    private static readonly (Effort Effort, int Times)[] Rounds = [(Effort.Quick, 6), (Effort.Standard, 1)];

    private static int _done;

    /// <summary>Answers the order, once in the process: what is compiled is compiled for all hosts in it.</summary>
    public Task StartingAsync(CancellationToken cancellationToken)
    {
        if (Interlocked.Exchange(ref _done, 1) == 0)
        {
            Order order = OrderText.Parse(OrderText.Carried(typeof(WarmUp), "warm-up.json")).Order!;
            try
            {
                OrderDesk desk = services.GetRequiredService<OrderDesk>();
                foreach ((Effort effort, int times) in Rounds)
                {
                    byte[] text = JsonSerializer.SerializeToUtf8Bytes(order with { Effort = effort }, ContractJson.Options);
                    for (int time = 0; time < times; time++)
                    {
                        _ = JsonSerializer.SerializeToUtf8Bytes(
                            desk.Handle(OrderText.Parse(text), Purposes.Quote, cancellationToken).Answer,
                            ContractJson.Options
                        );
                    }
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
