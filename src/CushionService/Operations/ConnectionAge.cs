using Microsoft.AspNetCore.Connections.Features;
using Microsoft.AspNetCore.Server.Kestrel.Core;

namespace CushionService.Operations;

/// <summary>How long a connection of gRPC lives. A client that balances by itself looks its name up again when a connection ends, and so
/// learns of instances that have been added.</summary>
internal static class ConnectionAge
{
    /// <summary>Asks clients to leave once their connection is of that age, give or take a tenth, so that they do not all leave at once.
    /// Calls that have begun are finished (GOAWAY, RFC 9113, section 6.8).</summary>
    /// <param name="options">Where the connections arrive.</param>
    /// <param name="age">The age; zero for none.</param>
    public static void Limit(this ListenOptions options, TimeSpan age)
    {
        if (age <= TimeSpan.Zero)
        {
            return;
        }

        options.Use(next =>
            async connection =>
            {
                IConnectionLifetimeNotificationFeature? leave = connection.Features.Get<IConnectionLifetimeNotificationFeature>();
                TimeSpan due = age * (0.9 + (0.2 * Random.Shared.NextDouble()));
                await using Timer timer = new(_ => leave?.RequestClose(), null, due, Timeout.InfiniteTimeSpan);
                await next(connection);
            }
        );
    }
}
