using System.IO.Compression;
using CushionService.Contract;
using CushionService.Deprecations;
using Grpc.AspNetCore.Server;
using Grpc.Net.Compression;
using Grpc.Reflection;

namespace CushionService.Grpc;

/// <summary>The door for gRPC: the calls, reflection for tools, and health for platforms that ask over gRPC.</summary>
internal static class GrpcDoor
{
    /// <summary>Adds the services.</summary>
    /// <param name="builder">The service; an order has the same greatest size here as over REST.</param>
    public static void AddGrpcDoor(this WebApplicationBuilder builder)
    {
        IGrpcServerBuilder server = builder.Services.AddGrpc(options =>
        {
            options.MaxReceiveMessageSize = Limits.OrderBytes;
            // Its catch-all routes would hide a wrong method or content type of the REST paths behind a 404.
            options.IgnoreUnknownServices = true;
            // A caller learns nothing of our exceptions.
            options.EnableDetailedErrors = false;
            // For callers that accept it; OrderCalls leaves small answers as they are.
            options.ResponseCompressionAlgorithm = "gzip";
            options.ResponseCompressionLevel = CompressionLevel.Fastest;
            options.CompressionProviders =
            [
                new CheckedCompression(new GzipCompressionProvider(CompressionLevel.Fastest)),
                new CheckedCompression(new DeflateCompressionProvider(CompressionLevel.Fastest)),
            ];
        });
        // Neither keeps anything of a call: one of each serves all.
        builder.Services.AddSingleton<CallErrors>();
        builder.Services.AddSingleton<OrderCalls>();
        builder.Services.AddGrpcReflection();
        server.AddServiceOptions<ReflectionServiceImpl>(options => options.Interceptors.Add<ReflectionLimit>());
        server.AddServiceOptions<ReflectionV1ServiceImpl>(options => options.Interceptors.Add<ReflectionLimit>());
        // A platform may ask for the whole, or for the service by its name.
        builder.Services.AddGrpcHealthChecks(options => options.Services.Map(V1.CushionService.Descriptor.FullName, static _ => true));
    }

    /// <summary>Maps the calls.</summary>
    /// <param name="app">The service.</param>
    public static void MapGrpcDoor(this WebApplication app)
    {
        var deprecations = app.Services.GetRequiredService<IReadOnlyDictionary<string, Deprecation>>();
        app.MapGrpcService<OrderCalls>()
            .Add(endpoint =>
            {
                // A method has the name of its operation over REST, with a capital.
                if (
                    endpoint.Metadata.OfType<GrpcMethodMetadata>().FirstOrDefault()?.Method.Name is [char first, .. string rest]
                    && deprecations.TryGetValue(char.ToLowerInvariant(first) + rest, out Deprecation? deprecation)
                )
                {
                    endpoint.Metadata.Add(deprecation);
                }
            });
        app.MapGrpcReflectionService();
        app.MapGrpcHealthChecksService().DisableRateLimiting();
    }
}
