using System.Diagnostics;
using System.Net;
using System.Net.Sockets;

namespace CushionService.LoadTests.Chaos;

/// <summary>nginx before two instances, on loopback, in a folder of its own.</summary>
internal sealed class Balancer : IDisposable
{
    private readonly string _folder;
    private readonly Process _process;

    private Balancer(Process process, string folder, Uri at) => (_process, _folder, At) = (process, folder, at);

    /// <summary>Where it hears.</summary>
    public Uri At { get; }

    /// <summary>Starts nginx before the instances.</summary>
    public static Balancer Start(params int[] instances)
    {
        string folder = Directory.CreateTempSubdirectory("balancer").FullName;
        int port = FreePort();
        // Every call of the service may be sent again: it keeps nothing. One that is busy sends its caller to the other,
        // and is not taken for dead: nginx would count that against it until none is left.
        File.WriteAllText(
            Path.Combine(folder, "nginx.conf"),
            $$"""
            daemon off; worker_processes 1; pid {{folder}}/nginx.pid; error_log {{folder}}/error.log;
            events { worker_connections 1024; }
            http {
              access_log off; client_body_temp_path {{folder}}/body; proxy_temp_path {{folder}}/proxy;
              fastcgi_temp_path {{folder}}/f; uwsgi_temp_path {{folder}}/u; scgi_temp_path {{folder}}/s;
              upstream nook { {{string.Join(
                ' ',
                instances.Select(instance => $"server 127.0.0.1:{instance} max_fails=0;")
            )}} keepalive 32; }
              server {
                listen 127.0.0.1:{{port}}; client_header_timeout 5s; client_body_timeout 5s; keepalive_requests 1000000;
                location / {
                  proxy_pass http://nook; proxy_http_version 1.1; proxy_set_header Connection ""; proxy_connect_timeout 1s;
                  proxy_next_upstream error timeout http_503 non_idempotent; proxy_next_upstream_tries 3;
                }
              }
            }
            """
        );
        Process process = Process.Start(
            new ProcessStartInfo("nginx", ["-p", folder, "-c", Path.Combine(folder, "nginx.conf")]) { RedirectStandardError = true }
        )!;
        return new Balancer(process, folder, new Uri($"http://127.0.0.1:{port}"));
    }

    /// <summary>A port that nobody hears on.</summary>
    public static int FreePort()
    {
        using TcpListener listener = new(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    public void Dispose()
    {
        using (Process signal = Process.Start("kill", ["-TERM", $"{_process.Id}"]))
        {
            signal.WaitForExit();
        }

        _process.WaitForExit(5_000);
        _process.Dispose();
        Directory.Delete(_folder, recursive: true);
    }
}
