using System.Net;
using CushionService.Contract;
using Microsoft.AspNetCore.Server.Kestrel.Core;

namespace CushionService.Operations;

/// <summary>Where the service listens: HTTP/1.1 where <c>ASPNETCORE_URLS</c> says, gRPC on HTTP/2 in clear text where <c>GRPC_URLS</c>
/// says. One clear-text port cannot speak both; an https address does.</summary>
internal static class Ports
{
    public static void ListenOnBothPorts(this WebApplicationBuilder builder)
    {
        string[] rest = Split(builder.Configuration[WebHostDefaults.ServerUrlsKey] ?? "http://localhost:8080");
        string[] grpc = Split(builder.Configuration["GRPC_URLS"] ?? "http://localhost:8081");
        // The addresses are listened on one by one, with their protocols: to the host the list is empty, and not missing, which has a
        // default.
        builder.Configuration.AddInMemoryCollection([new(WebHostDefaults.ServerUrlsKey, ";")]);
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = 2 * Limits.OrderBytes;
            foreach (string url in rest)
            {
                Listen(kestrel, BindingAddress.Parse(url), HttpProtocols.Http1);
            }

            foreach (string url in grpc)
            {
                Listen(kestrel, BindingAddress.Parse(url), HttpProtocols.Http2);
            }
        });
    }

    private static string[] Split(string urls) => urls.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    private static void Listen(KestrelServerOptions kestrel, BindingAddress address, HttpProtocols clearText)
    {
        if (address.IsUnixPipe)
        {
            kestrel.ListenUnixSocket(address.UnixPipePath, Speak);
        }
        else if (address.Host.Equals("localhost", StringComparison.OrdinalIgnoreCase))
        {
            kestrel.ListenLocalhost(address.Port, Speak);
        }
        else if (IPAddress.TryParse(address.Host, out IPAddress? ip))
        {
            kestrel.Listen(ip, address.Port, Speak);
        }
        else
        {
            kestrel.ListenAnyIP(address.Port, Speak);
        }

        void Speak(ListenOptions options)
        {
            bool secure = address.Scheme == Uri.UriSchemeHttps;
            options.Protocols = secure ? HttpProtocols.Http1AndHttp2 : clearText;
            if (secure)
            {
                options.UseHttps();
            }
        }
    }
}
