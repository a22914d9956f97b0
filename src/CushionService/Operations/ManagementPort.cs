using CushionService.Rejections;

namespace CushionService.Operations;

/// <summary>A port for the platform alone: where <c>MANAGEMENT_URLS</c> names one, health and metrics are there and nowhere
/// else, nothing else is there, and tools find no reflection on the port of gRPC. What is decided by is the port that a call
/// came in at, which no caller can make up.</summary>
internal static class ManagementPort
{
    /// <summary>The setting.</summary>
    public const string Setting = "MANAGEMENT_URLS";

    private const string Reflection = "/grpc.reflection";

    /// <summary>Answers 404 where a call came in at the wrong port. Comes first.</summary>
    /// <param name="app">The pipeline; without the setting nothing is added to it.</param>
    public static void UseManagementPort(this WebApplication app)
    {
        int[] ports = [.. Ports.Split(app.Configuration[Setting] ?? "").Select(url => BindingAddress.Parse(url).Port)];
        if (ports.Length == 0)
        {
            return;
        }

        app.Use(
            (http, next) =>
            {
                bool isInside = ports.Contains(http.Connection.LocalPort),
                    isOurs = http.Request.Path.StartsWithSegments("/health") || http.Request.Path == "/metrics";
                bool isReflection = http.Request.Path.Value!.StartsWith(Reflection, StringComparison.Ordinal);
                return isInside == isOurs && !isReflection ? next(http) : Problems.WriteAsync(http, StatusCodes.Status404NotFound);
            }
        );
    }
}
