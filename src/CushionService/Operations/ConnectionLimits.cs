using System.Diagnostics.Metrics;
using System.Net;
using CushionService.Access;
using CushionService.Metrics;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Microsoft.Extensions.Options;

namespace CushionService.Operations;

/// <summary>How many connections may be open: in all, so that the process keeps room for its own files; and of one address, so that it
/// cannot keep all others out. Set once most of the process's own files are open, and before it listens.</summary>
/// <param name="kestrel">Gets the limit of each address that the service listens on.</param>
/// <param name="options">The limits that are configured.</param>
/// <param name="configuration">Has the networks of known proxies, each of which has the connections of many callers.</param>
internal sealed class ConnectionLimits(
    IOptions<KestrelServerOptions> kestrel,
    IOptions<LifetimeOptions> options,
    IConfiguration configuration
) : IHostedLifecycleService
{
    private static readonly Counter<long> Refused = ServiceMeter.Meter.CreateCounter<long>(
        "cushionservice.connections.refused",
        "{connection}",
        "Connections closed at once, since their address had as many open as one may have."
    );

    private readonly System.Net.IPNetwork[] _proxies = Proxies.Of(configuration);

    // Where nothing is listened on, as in tests, there is nothing to limit.
    private int _most = int.MaxValue;

    /// <summary>How many addresses the service listens on; the server limits each by itself.</summary>
    public int Addresses { get; set; } = 1;

    /// <summary>Sets the limits.</summary>
    /// <exception cref="InvalidOperationException">The limit of descriptors leaves room for too few connections.</exception>
    /// <param name="cancellationToken">Not used: this takes no time.</param>
    public Task StartingAsync(CancellationToken cancellationToken)
    {
        long all = options.Value.Connections ?? Descriptors.ConnectionsFor(Addresses);
        kestrel.Value.Limits.MaxConcurrentConnections = all;
        _most = options.Value.ConnectionsOfAddress ?? (int)Math.Max(1, all / 4);
        return Task.CompletedTask;
    }

    /// <summary>Closes a connection at once whose address has as many open as one may have.</summary>
    /// <param name="listening">Where the connections arrive; counted by itself.</param>
    public void Limit(ListenOptions listening)
    {
        Dictionary<string, int> open = [];
        listening.Use(next =>
            async connection =>
            {
                if (connection.RemoteEndPoint is not IPEndPoint { Address: { } from } || IsProxy(from))
                {
                    await next(connection);
                    return;
                }

                string address = CallerAddress.Of(from);
                if (!Enter(open, address))
                {
                    Refused.Add(1);
                    connection.Abort();
                    return;
                }

                try
                {
                    await next(connection);
                }
                finally
                {
                    Leave(open, address);
                }
            }
        );
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

    private bool IsProxy(IPAddress address) =>
        Array.Exists(_proxies, network => network.Contains(address.IsIPv4MappedToIPv6 ? address.MapToIPv4() : address));

    private bool Enter(Dictionary<string, int> open, string address)
    {
        lock (open)
        {
            int count = open.GetValueOrDefault(address);
            if (count >= _most)
            {
                return false;
            }

            open[address] = count + 1;
            return true;
        }
    }

    // An address without a connection is forgotten.
    private static void Leave(Dictionary<string, int> open, string address)
    {
        lock (open)
        {
            int left = open[address] - 1;
            if (left > 0)
            {
                open[address] = left;
            }
            else
            {
                open.Remove(address);
            }
        }
    }
}
