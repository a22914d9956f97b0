using CushionService.Admission;
using CushionService.Desk;
using CushionService.Operations;
using CushionService.PriceBooks;

namespace CushionService.Bulk;

/// <summary>The service as a worker: it takes orders from a queue and not from calls. Of its addresses only health and metrics
/// answer.</summary>
internal static class WorkerProgram
{
    /// <summary>The option of the command line.</summary>
    public const string Option = "--worker";

    /// <summary>Works until the process is to end.</summary>
    /// <param name="args">The rest of the command line, which is configuration.</param>
    /// <returns>The exit code.</returns>
    public static async Task<int> RunAsync(string[] args)
    {
        WebApplicationBuilder builder = WebApplication.CreateBuilder(
            new WebApplicationOptions { Args = args, ContentRootPath = AppContext.BaseDirectory }
        );
        builder.AddTelemetry();
        builder.AddLifetime();
        builder.ListenForPlatform();
        builder.AddPriceBooks();
        builder.AddAdmission();
        builder.Services.AddSingleton<OrderDesk>();
        builder.Services.AddSingleton<BulkDesk>();
        builder.Services.AddOptions<WorkerOptions>().BindConfiguration(WorkerOptions.Section).ValidateDataAnnotations().ValidateOnStart();
        builder.Services.AddSingleton<OrderQueue>();
        builder.Services.AddSingleton<OrderAnswering>();
        builder.Services.AddHostedService<OrderWorker>();
        builder.Services.AddHealthChecks().AddCheck<QueueHealth>("queue");

        WebApplication app = builder.Build();
        app.MapHealth();
        app.MapTelemetry();
        await app.RunToEndAsync();
        return 0;
    }
}
