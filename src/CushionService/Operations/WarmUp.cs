using System.Text.Json;
using CushionService.Desk;
using CushionService.Json;
using CushionService.Rest.OpenApi;

namespace CushionService.Operations;

/// <summary>Works on an order some times before the service hears callers, so that the first of them does not wait for the compiler, nor is
/// turned away while others do.</summary>
internal sealed class WarmUp(IServiceProvider services) : IHostedLifecycleService
{
    // After thirty calls a method is compiled anew, for speed.
    private const int Times = 40;

    private static int _done;

    public Task StartingAsync(CancellationToken cancellationToken)
    {
        // What is compiled is compiled for the whole process.
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
                // A desk that cannot be made, or fails, is for the readiness to tell.
            }
        }

        return Task.CompletedTask;
    }

    public Task StartAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StartedAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StoppingAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StoppedAsync(CancellationToken cancellationToken) => Task.CompletedTask;
}
