using CushionService.Admission;
using CushionService.Metrics;
using CushionService.PriceBooks;
using OpenTelemetry;
using OpenTelemetry.Logs;
using OpenTelemetry.Metrics;
using OpenTelemetry.Resources;
using OpenTelemetry.Trace;
using Serilog;

namespace CushionService.Operations;

/// <summary>Logs, traces and metrics. Metrics are always kept, for <c>/metrics</c>; traces, and logs beside the
/// console, are sent where <c>OTEL_EXPORTER_OTLP_ENDPOINT</c> says (OpenTelemetry Protocol), and not made when it says
/// nothing.</summary>
internal static class TelemetrySetup
{
    // What .NET counts of the server and of its own memory and threads.
    private static readonly string[] Meters =
    [
        ServiceMeter.Name,
        "Microsoft.AspNetCore.Hosting",
        "Microsoft.AspNetCore.Server.Kestrel",
        "System.Runtime",
    ];

    /// <summary>Adds logging, metrics and, where there is an address for them, traces.</summary>
    public static void AddTelemetry(this WebApplicationBuilder builder)
    {
        // Serilog writes to the console, and passes every line on to OpenTelemetry.
        builder.Logging.ClearProviders();
        // No static logger: two hosts in one process, as in tests, each have their own.
        builder.Services.AddSerilog(
            logger => logger.ReadFrom.Configuration(builder.Configuration).Filter.ByExcluding(ProtocolFaults.Has),
            preserveStaticLogger: true,
            writeToProviders: true
        );
        // Metrics are kept in memory and read from /metrics; sending them is an extra.
        OpenTelemetryBuilder telemetry = builder
            .Services.AddOpenTelemetry()
            .ConfigureResource(resource => resource.AddService("cushionservice", serviceVersion: Wording.EngineVersion.Current))
            .WithMetrics(metrics => metrics.AddMeter(Meters).AddPrometheusExporter());
        if (builder.Configuration["OTEL_EXPORTER_OTLP_ENDPOINT"] is not null)
        {
            telemetry.WithMetrics(metrics => metrics.AddOtlpExporter());
            telemetry.WithTracing(traces =>
                traces
                    // The platform asks for health and metrics every few seconds: nobody looks for these traces.
                    .AddAspNetCoreInstrumentation(options =>
                        options.Filter = http =>
                            !http.Request.Path.StartsWithSegments("/health") && !http.Request.Path.StartsWithSegments("/metrics")
                    )
                    .AddOtlpExporter()
            );
            telemetry.WithLogging(logs => logs.AddOtlpExporter());
        }
    }

    /// <summary>Maps <c>/metrics</c>, in the text format of Prometheus.</summary>
    public static void MapTelemetry(this WebApplication app)
    {
        QueueMetrics.Watch(app.Services.GetRequiredService<Turns>());
        PriceBookHealth.Watch(app.Services.GetRequiredService<PriceBookStore>());
        app.MapPrometheusScrapingEndpoint("/metrics").DisableRateLimiting().WithMetadata(PlatformEndpoint.Mark);
    }
}
