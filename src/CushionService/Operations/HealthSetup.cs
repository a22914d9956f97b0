using System.Text.Json;
using Microsoft.AspNetCore.Diagnostics.HealthChecks;
using Microsoft.Extensions.Diagnostics.HealthChecks;

namespace CushionService.Operations;

/// <summary>What platforms ask: whether the service is alive, and whether it may be sent calls.</summary>
internal static class HealthSetup
{
    /// <summary>Maps both. Alive means that the process answers at all. Ready says in JSON what is the matter with each
    /// part; a part that is degraded leaves the service ready.</summary>
    /// <param name="app">The service. Neither address is limited, so that a busy service is not taken for a dead
    /// one.</param>
    public static void MapHealth(this WebApplication app)
    {
        app.MapHealthChecks("/health/live", new HealthCheckOptions { Predicate = _ => false })
            .DisableRateLimiting()
            .WithMetadata(PlatformEndpoint.Mark);
        app.MapHealthChecks("/health/ready", new HealthCheckOptions { ResponseWriter = WriteAsync })
            .DisableRateLimiting()
            .WithMetadata(PlatformEndpoint.Mark);
    }

    private static Task WriteAsync(HttpContext http, HealthReport report)
    {
        http.Response.ContentType = "application/json";
        return JsonSerializer.SerializeAsync(
            http.Response.Body,
            new
            {
                Status = $"{report.Status}",
                Checks = report.Entries.Select(entry => new
                {
                    Name = entry.Key,
                    Status = $"{entry.Value.Status}",
                    entry.Value.Description,
                }),
            },
            JsonSerializerOptions.Web,
            http.RequestAborted
        );
    }
}
