using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using CushionService.Access;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Access;

/// <summary>What caches between the service and a browser may keep, and for whom; also behind a real one.</summary>
public sealed class CacheTests
{
    private const string Pad = "/v1/estimate?units=in&construction=boxed&outline=rectangle&width=44&depth=18&thickness=3&fabricWidth=54";
    private const string Shop = "https://shop.example";

    private static readonly string Key = Callers.NewKey();

    [Theory]
    [InlineData(Pad)]
    [InlineData("/v1/catalogue")]
    public async Task An_answer_that_caches_keep_depends_on_the_page_that_asks_and_says_nothing_of_its_caller(string path)
    {
        using RunningService service = new(_ => { }, false, [.. Callers.Settings(0, "shop", Key, "estimate"), ("Access:Origins:0", Shop)]);
        using HttpResponseMessage open = await SendAsync(service.Http, path);
        using HttpResponseMessage keyed = await SendAsync(service.Http, path, key: Key);
        using HttpResponseMessage again = await SendAsync(service.Http, path, tag: open.Headers.ETag!.Tag);
        using HttpResponseMessage refused = await SendAsync(service.Http, path + (path == Pad ? "&colour=blue" : "?colour=blue"));

        Assert.All([open, keyed, again], response => Assert.Contains("Origin", response.Headers.Vary));
        Assert.True(open.Headers.CacheControl!.Public);
        Assert.False(open.Headers.Contains("RateLimit"));
        Assert.False(open.Headers.Contains("RateLimit-Policy"));
        Assert.Equal(HttpStatusCode.NotModified, again.StatusCode);
        Assert.True(again.Headers.CacheControl!.Public);
        Assert.True(keyed.Headers.CacheControl!.Private);
        Assert.False(keyed.Headers.CacheControl.Public);
        Assert.True(keyed.Headers.Contains("RateLimit"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.StatusCode);
        Assert.True(refused.Headers.CacheControl!.NoStore);
    }

    [Theory]
    [InlineData(Pad)]
    [InlineData("/v1/catalogue")]
    public async Task What_a_request_says_of_its_body_changes_nothing_of_its_answer(string path)
    {
        using RunningService service = new(_ => { }, false, Callers.Settings(0, "shop", Key, "estimate"));
        using HttpRequestMessage asked = Request();
        using HttpResponseMessage answer = await service.Http.SendAsync(asked);
        using HttpRequestMessage wrong = Request();
        wrong.Headers.Add(KeyHandler.Header, "a key that nobody gave out");
        using HttpResponseMessage refused = await service.Http.SendAsync(wrong);

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Contains("Accept-Language", answer.Headers.Vary);
        Assert.Equal("fr", answer.Content.Headers.ContentLanguage.Single());
        Assert.Equal(HttpStatusCode.Unauthorized, refused.StatusCode);
        await refused.ProblemAsync();

        HttpRequestMessage Request()
        {
            HttpRequestMessage request = new(HttpMethod.Get, path) { Content = new ByteArrayContent([]) };
            request.Content.Headers.ContentType = new("application/grpc");
            request.Headers.AcceptLanguage.ParseAdd("fr");
            return request;
        }
    }

    [SkippableFact]
    public async Task Behind_nginx_every_page_gets_its_own_header_and_a_key_opens_nothing_for_others()
    {
        Skip.IfNot(File.Exists("/usr/sbin/nginx"), "nginx is not installed (Debian's nginx-light).");
        await using ServiceProcess service = await ServiceProcess.StartAsync([
            ("Access__Origins__0", Shop),
            ("Access__Origins__1", "https://other.example"),
            ("Access__Keys__0__Name", "shop"),
            ("Access__Keys__0__Sha256", AccessPolicy.DigestOf(Key)),
        ]);
        string folder = Directory.CreateTempSubdirectory("cache").FullName;
        int port = FreePort();
        File.WriteAllText(
            Path.Combine(folder, "nginx.conf"),
            $$"""
            user root; daemon off; worker_processes 1; pid {{folder}}/pid; error_log {{folder}}/error.log;
            events { worker_connections 64; }
            http {
              access_log off; client_body_temp_path {{folder}}/b; proxy_temp_path {{folder}}/p; fastcgi_temp_path {{folder}}/f;
              uwsgi_temp_path {{folder}}/u; scgi_temp_path {{folder}}/s;
              proxy_cache_path {{folder}}/kept keys_zone=kept:1m use_temp_path=off;
              server {
                listen 127.0.0.1:{{port}};
                location / { proxy_pass {{service.Rest.ToString().TrimEnd(
                '/'
            )}}; proxy_cache kept; add_header X-Cache $upstream_cache_status; }
              }
            }
            """
        );
        using Process nginx = Process.Start("/usr/sbin/nginx", ["-p", folder, "-c", Path.Combine(folder, "nginx.conf")]);
        try
        {
            using HttpClient http = new() { BaseAddress = new Uri($"http://127.0.0.1:{port}") };
            await UntilListeningAsync(http);
            // A key first: its answer must be nobody else's.
            Assert.Equal(("MISS", null), await AskAsync(http, null, Key));
            Assert.Equal(("MISS", null), await AskAsync(http, null));
            Assert.Equal(("HIT", null), await AskAsync(http, null));
            Assert.Equal(("MISS", Shop), await AskAsync(http, Shop));
            Assert.Equal(("HIT", Shop), await AskAsync(http, Shop));
            Assert.Equal(("MISS", "https://other.example"), await AskAsync(http, "https://other.example"));
            Assert.Equal(("HIT", null), await AskAsync(http, null));

            // Each reader gets the language that is asked for, kept or not.
            Assert.Equal(("MISS", "de"), await AskInAsync(http, Pad, "de"));
            Assert.Equal(("MISS", "fr"), await AskInAsync(http, Pad, "fr"));
            Assert.Equal(("HIT", "de"), await AskInAsync(http, Pad, "de"));
            Assert.Equal(("HIT", "fr"), await AskInAsync(http, Pad, "fr"));
            Assert.Equal(("MISS", "es"), await AskInAsync(http, Pad + "&language=es", "de"));
            Assert.Equal(("HIT", "es"), await AskInAsync(http, Pad + "&language=es", "de"));
        }
        finally
        {
            nginx.Kill(entireProcessTree: true);
            await nginx.WaitForExitAsync();
            Directory.Delete(folder, recursive: true);
        }
    }

    private static async Task<(string Cache, string? Allowed)> AskAsync(HttpClient http, string? origin, string? key = null)
    {
        using HttpResponseMessage response = await SendAsync(http, Pad, key, origin: origin);
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        return (
            response.Headers.GetValues("X-Cache").Single(),
            response.Headers.TryGetValues("Access-Control-Allow-Origin", out IEnumerable<string>? allowed) ? allowed.Single() : null
        );
    }

    private static async Task<(string Cache, string Language)> AskInAsync(HttpClient http, string path, string language)
    {
        using HttpRequestMessage request = new(HttpMethod.Get, path);
        request.Headers.AcceptLanguage.ParseAdd(language);
        using HttpResponseMessage response = await http.SendAsync(request);
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        return (response.Headers.GetValues("X-Cache").Single(), response.Content.Headers.ContentLanguage.Single());
    }

    private static async Task UntilListeningAsync(HttpClient http)
    {
        for (int attempt = 0; ; attempt++)
        {
            try
            {
                using HttpResponseMessage response = await http.GetAsync(new Uri("/health/live", UriKind.Relative));
                return;
            }
            catch (HttpRequestException) when (attempt < 100)
            {
                await Task.Delay(100);
            }
        }
    }

    private static int FreePort()
    {
        using TcpListener listener = new(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    private static async Task<HttpResponseMessage> SendAsync(
        HttpClient http,
        string path,
        string? key = null,
        string? tag = null,
        string? origin = null
    )
    {
        using HttpRequestMessage request = new(HttpMethod.Get, path);
        if (key is not null)
        {
            request.Headers.Add(KeyHandler.Header, key);
        }

        if (tag is not null)
        {
            request.Headers.Add("If-None-Match", tag);
        }

        if (origin is not null)
        {
            request.Headers.Add("Origin", origin);
        }

        return await http.SendAsync(request);
    }
}
