using System.Net;
using CushionService.Contract;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Microsoft.Extensions.Options;

namespace CushionService.Operations;

/// <summary>Where the service listens: HTTP/1.1 where <c>ASPNETCORE_URLS</c> says, gRPC on HTTP/2 in clear text where
/// <c>GRPC_URLS</c> says, and health and metrics by themselves where <c>MANAGEMENT_URLS</c> says. One clear-text port
/// cannot speak both; an https address does.</summary>
internal static class Ports
{
    /// <summary>Configures the addresses, and the greatest body. Orders have a limit of their own,
    /// <see cref="Limits.OrderBytes"/>; the server's is twice that, so that one that is a little too long is answered
    /// with a problem and not cut off.</summary>
    /// <param name="builder">Its configuration has the addresses.</param>
    public static void ListenOnBothPorts(this WebApplicationBuilder builder)
    {
        string[] rest = Split(builder.Configuration[WebHostDefaults.ServerUrlsKey] ?? "http://localhost:8080");
        string[] grpc = Split(builder.Configuration["GRPC_URLS"] ?? "http://localhost:8081");
        string[] own = Split(builder.Configuration[ManagementPort.Setting] ?? "");
        // Each address is configured below, with its protocols. The host gets an empty list: with none it would add an
        // address of its own.
        builder.Configuration.AddInMemoryCollection([new(WebHostDefaults.ServerUrlsKey, ";")]);
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = 2 * Limits.OrderBytes;
            ConnectionLimits connections = kestrel.ApplicationServices.GetRequiredService<ConnectionLimits>();
            connections.Addresses = ((string[])[.. rest, .. grpc, .. own]).Sum(url => SocketsOf(BindingAddress.Parse(url)));
            foreach (string url in (string[])[.. rest, .. own])
            {
                Listen(kestrel, BindingAddress.Parse(url), HttpProtocols.Http1, connections);
            }

            LifetimeOptions lifetime = kestrel.ApplicationServices.GetRequiredService<IOptions<LifetimeOptions>>().Value;
            foreach (string url in grpc)
            {
                TimeSpan age = TimeSpan.FromSeconds(lifetime.GrpcConnectionAgeSeconds);
                Listen(kestrel, BindingAddress.Parse(url), HttpProtocols.Http2, connections, age);
            }
        });
    }

    /// <summary>Configures the address of a worker, which has health and metrics alone: that of <c>MANAGEMENT_URLS</c>, or else of
    /// <c>ASPNETCORE_URLS</c>.</summary>
    /// <param name="builder">Its configuration has the addresses.</param>
    public static void ListenForPlatform(this WebApplicationBuilder builder)
    {
        string urls =
            builder.Configuration[ManagementPort.Setting]
            ?? builder.Configuration[WebHostDefaults.ServerUrlsKey]
            ?? "http://localhost:8080";
        builder.Configuration.AddInMemoryCollection([new(WebHostDefaults.ServerUrlsKey, ";")]);
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            foreach (string url in Split(urls))
            {
                ConnectionLimits connections = kestrel.ApplicationServices.GetRequiredService<ConnectionLimits>();
                Listen(kestrel, BindingAddress.Parse(url), HttpProtocols.Http1, connections);
            }
        });
    }

    /// <summary>Several addresses, separated by semicolons.</summary>
    /// <param name="urls">The value of a setting; empty for none.</param>
    public static string[] Split(string urls) => urls.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    // The machine itself has an address of each version.
    private static int SocketsOf(BindingAddress address) => IsLocalhost(address) ? 2 : 1;

    private static bool IsLocalhost(BindingAddress address) =>
        !address.IsUnixPipe && address.Host.Equals("localhost", StringComparison.OrdinalIgnoreCase);

    // A host by name or a star means every address of the machine, as in ASPNETCORE_URLS. TLS agrees on the protocol
    // itself, clear text cannot.
    private static void Listen(
        KestrelServerOptions kestrel,
        BindingAddress address,
        HttpProtocols clearText,
        ConnectionLimits connections,
        TimeSpan age = default
    )
    {
        if (address.IsUnixPipe)
        {
            kestrel.ListenUnixSocket(address.UnixPipePath, Configure);
        }
        else if (IsLocalhost(address))
        {
            kestrel.ListenLocalhost(address.Port, Configure);
        }
        else if (IPAddress.TryParse(address.Host, out IPAddress? ip))
        {
            kestrel.Listen(ip, address.Port, Configure);
        }
        else
        {
            kestrel.ListenAnyIP(address.Port, Configure);
        }

        void Configure(ListenOptions options)
        {
            bool secure = address.Scheme == Uri.UriSchemeHttps;
            options.Protocols = secure ? HttpProtocols.Http1AndHttp2 : clearText;
            connections.Limit(options);
            options.Limit(age);
            if (secure)
            {
                options.UseHttps();
            }
        }
    }
}
