using System.Net.Http.Headers;
using System.Text;
using Grpc.Net.Client;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace CushionService.Tests.Hosting;

/// <summary>The real host in memory, with a client for each door. A call after which the service has logged an error throws.</summary>
public sealed class RunningService : IDisposable
{
    private readonly ServerErrors _errors = new();
    private readonly WebApplicationFactory<Program> _factory;
    private readonly GrpcChannel _channel;

    public RunningService()
        : this(_ => { }) { }

    internal RunningService(Action<IServiceCollection> change, bool mayFail = false, params (string Key, string Value)[] settings)
    {
        _factory = new WebApplicationFactory<Program>().WithWebHostBuilder(host =>
        {
            // Tests of other things send more than any one caller, on a machine that may be busy.
            host.UseSetting("Admission:LongestWaitMs", "60000");
            host.UseSetting("Admission:PageRate", "1000000");
            host.UseSetting("Admission:PageBurst", "1000000");
            host.UseSetting("Access:Anonymous:Steps", "1000000");
            host.UseSetting("Access:Anonymous:StepsBurst", "10000000");
            host.UseSetting("Access:Anonymous:Rate", "1000000");
            host.UseSetting("Access:Anonymous:Burst", "1000000");
            foreach ((string key, string value) in settings)
            {
                host.UseSetting(key, value);
            }

            host.ConfigureLogging(logging => logging.AddProvider(_errors));
            // Without it, rejected callers would have to try again after a random time.
            host.ConfigureTestServices(services => services.AddSingleton<Random>(new KnownRandom(0)));
            host.ConfigureTestServices(change);
        });
        Http = _factory.CreateDefaultClient(new ErrorWatch(_errors, mayFail));
        Http.Timeout = TimeSpan.FromMinutes(3);
        ErrorWatch watch = new(_errors, mayFail) { InnerHandler = _factory.Server.CreateHandler() };
        _channel = GrpcChannel.ForAddress(_factory.Server.BaseAddress, new GrpcChannelOptions { HttpHandler = watch });
        Calls = new(_channel);
    }

    public HttpClient Http { get; }

    public global::CushionService.Grpc.V1.CushionService.CushionServiceClient Calls { get; }

    public GrpcChannel Channel => _channel;

    public IServiceProvider Services => _factory.Services;

    /// <summary>The errors logged so far.</summary>
    public IReadOnlyCollection<string> Errors => _errors.Logged;

    /// <summary>Sends an order to a call.</summary>
    public Task<HttpResponseMessage> PostAsync(string call, string order) => PostAsync(call, Encoding.UTF8.GetBytes(order));

    /// <summary>Sends an order of a reader of a language.</summary>
    public async Task<HttpResponseMessage> PostInAsync(string call, string order, string language)
    {
        using HttpRequestMessage request = new(HttpMethod.Post, new Uri($"/v1/{call}", UriKind.Relative));
        request.Content = new StringContent(order, Encoding.UTF8, "application/json");
        request.Headers.AcceptLanguage.ParseAdd(language);
        return await Http.SendAsync(request);
    }

    /// <summary>Sends bytes to a call, as they are.</summary>
    public Task<HttpResponseMessage> PostAsync(string call, byte[] body, string contentType = "application/json")
    {
        ByteArrayContent content = new(body);
        content.Headers.ContentType = MediaTypeHeaderValue.Parse(contentType);
        return Http.PostAsync(new Uri($"/v1/{call}", UriKind.Relative), content);
    }

    /// <summary>Ends the service.</summary>
    public void Dispose()
    {
        _channel.Dispose();
        Http.Dispose();
        _factory.Dispose();
    }
}
