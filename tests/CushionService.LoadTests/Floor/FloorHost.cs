using CushionService.Desk;
using CushionService.LoadTests.Floor;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;

[assembly: HostingStartup(typeof(FloorHost))]

namespace CushionService.LoadTests.Floor;

/// <summary>The service with the floor beside it: calls that parse the same body and echo it, so that figures are ratios. They pass no
/// limit, no access check and no hand.</summary>
public sealed class FloorHost : IHostingStartup, IStartupFilter
{
    /// <summary>The path of the floor for REST.</summary>
    public const string Path = "/floor";

    /// <summary>Runs the service by its own entry point.</summary>
    public static void Run()
    {
        Environment.SetEnvironmentVariable("ASPNETCORE_HOSTINGSTARTUPASSEMBLIES", typeof(FloorHost).Assembly.GetName().Name);
        typeof(OrderDesk).Assembly.EntryPoint!.Invoke(null, [Array.Empty<string>()]);
    }

    /// <inheritdoc/>
    public void Configure(IWebHostBuilder builder) => builder.ConfigureServices(services => services.AddSingleton<IStartupFilter>(this));

    /// <inheritdoc/>
    public Action<IApplicationBuilder> Configure(Action<IApplicationBuilder> next) =>
        app =>
        {
            app.MapWhen(
                http =>
                    http.Request.Path.Value is { } path
                    && (path == Path || path.StartsWith("/" + FloorCalls.Service, StringComparison.Ordinal)),
                floor =>
                    floor
                        .UseRouting()
                        .UseEndpoints(endpoints =>
                        {
                            endpoints.MapPost(Path, (Contract.Orders.Order order) => Results.Json(order, Json.ContractJson.Options));
                            endpoints.MapGrpcService<FloorCalls>();
                        })
            );
            next(app);
        };
}
