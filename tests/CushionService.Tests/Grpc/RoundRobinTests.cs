using System.Globalization;
using System.Text.RegularExpressions;
using CushionService.Tests.Access;
using CushionService.Tests.Hosting;
using Grpc.Core;
using Grpc.Net.Client;
using Grpc.Net.Client.Balancer;
using Grpc.Net.Client.Configuration;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging.Abstractions;
using V1 = CushionService.Grpc.V1;

namespace CushionService.Tests.Grpc;

/// <summary>Clients that balance by themselves spread their calls over the addresses of a name, and find an instance that was added within
/// the age of a connection.</summary>
public sealed partial class RoundRobinTests
{
    private const double AgeSeconds = 2;

    [Fact]
    public async Task An_instance_that_is_added_takes_its_part_within_the_age_of_a_connection()
    {
        (string, string)[] settings = [("Lifetime__GrpcConnectionAgeSeconds", $"{AgeSeconds}")];
        await using ServiceProcess first = await ServiceProcess.StartAsync(settings),
            second = await ServiceProcess.StartAsync(settings);
        Names names = new() { Addresses = [Of(first)] };
        ServiceCollection services = new();
        services.AddSingleton<ResolverFactory>(names);
        await using ServiceProvider provider = services.BuildServiceProvider();
        using GrpcChannel channel = GrpcChannel.ForAddress(
            "names:///cushionservice-grpc",
            new GrpcChannelOptions
            {
                Credentials = ChannelCredentials.Insecure,
                ServiceProvider = provider,
                ServiceConfig = new ServiceConfig { LoadBalancingConfigs = { new RoundRobinConfig() }, MethodConfigs = { AgainOnAnother } },
            }
        );
        V1.CushionService.CushionServiceClient calls = new(channel);
        await CallAsync(calls, 20);
        Assert.Equal(0, await OrdersAsync(second));

        // The name has another address; nobody tells the client.
        names.Addresses = [Of(first), Of(second)];
        DateTime late = DateTime.UtcNow.AddSeconds(5 * AgeSeconds);
        while (await OrdersAsync(second) == 0)
        {
            Assert.True(DateTime.UtcNow < late, "The second instance gets no calls.");
            await CallAsync(calls, 5);
            await Task.Delay(100);
        }

        long before = await OrdersAsync(first),
            other = await OrdersAsync(second);
        // Over two ages of a connection: one that ends in between is passed over for a moment.
        for (int call = 0; call < 100; call++)
        {
            await CallAsync(calls, 1);
            await Task.Delay(TimeSpan.FromSeconds(2 * AgeSeconds / 100));
        }

        Assert.InRange(await OrdersAsync(first) - before, 30, 70);
        Assert.InRange(await OrdersAsync(second) - other, 30, 70);
    }

    // A call that meets the end of its connection has not been begun (RFC 9113, section 6.8): .NET's client reports it as internal.
    private static MethodConfig AgainOnAnother =>
        new()
        {
            Names = { MethodName.Default },
            RetryPolicy = new RetryPolicy
            {
                MaxAttempts = 3,
                InitialBackoff = TimeSpan.FromMilliseconds(20),
                MaxBackoff = TimeSpan.FromMilliseconds(100),
                BackoffMultiplier = 2,
                RetryableStatusCodes = { StatusCode.Unavailable, StatusCode.Internal },
            },
        };

    private static BalancerAddress Of(ServiceProcess service) => new(service.Grpc.Host, service.Grpc.Port);

    private static async Task CallAsync(V1.CushionService.CushionServiceClient calls, int count)
    {
        for (int call = 0; call < count; call++)
        {
            await calls.ValidateAsync(new() { Order = Callers.PillowMessage });
        }
    }

    private static async Task<long> OrdersAsync(ServiceProcess service)
    {
        using HttpClient http = new() { BaseAddress = service.Rest };
        string metrics = await http.GetStringAsync(new Uri("/metrics", UriKind.Relative));
        return Count().Matches(metrics).Sum(line => long.Parse(line.Groups[1].Value, CultureInfo.InvariantCulture));
    }

    [GeneratedRegex(@"^cushionservice_orders_total\{[^}]*\} (\d+)", RegexOptions.Multiline)]
    private static partial Regex Count();

    // Instead of DNS.
    private sealed class Names : ResolverFactory
    {
        public override string Name => "names";

        public IReadOnlyList<BalancerAddress> Addresses { get; set; } = [];

        public override Resolver Create(ResolverOptions options) => new NameResolver(this);
    }

    // Looks the name up when a connection has ended, as the resolver for DNS does.
    private sealed class NameResolver(Names names) : PollingResolver(NullLoggerFactory.Instance)
    {
        protected override Task ResolveAsync(CancellationToken cancellationToken)
        {
            Listener(ResolverResult.ForResult(names.Addresses));
            return Task.CompletedTask;
        }
    }
}
