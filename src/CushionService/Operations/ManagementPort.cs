using CushionService.Rejections;
using Grpc.AspNetCore.Server;

namespace CushionService.Operations;

/// <summary>A port for the platform alone: where <c>MANAGEMENT_URLS</c> names one, health and metrics are there and nowhere
/// else, nothing else is there, and tools find no reflection on the port of gRPC. What is decided by is the port that a call
/// came in at, and the endpoint that it has found: no caller can make up the one, or spell a path so that it misses the
/// other.</summary>
internal static class ManagementPort
{
    /// <summary>The setting.</summary>
    public const string Setting = "MANAGEMENT_URLS";

    private const string Reflection = "grpc.reflection.";

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
                EndpointMetadataCollection? found = http.GetEndpoint()?.Metadata;
                bool isInside = ports.Contains(http.Connection.LocalPort),
                    isOurs = found?.GetMetadata<PlatformEndpoint>() is not null;
                bool isReflection =
                    found?.GetMetadata<GrpcMethodMetadata>()?.Method.ServiceName.StartsWith(Reflection, StringComparison.Ordinal) == true;
                return isInside == isOurs && !isReflection ? next(http) : Problems.WriteAsync(http, StatusCodes.Status404NotFound);
            }
        );
    }
}
