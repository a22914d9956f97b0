namespace CushionService.Grpc;

/// <summary>The door for gRPC.</summary>
internal static class GrpcDoor
{
    public static void AddGrpcDoor(this WebApplicationBuilder builder)
    {
        builder.Services.AddGrpc(options =>
        {
            options.MaxReceiveMessageSize = Limits.OrderBytes;
            // Its catch-all routes would hide a wrong method or content type of the REST paths behind a 404.
            options.IgnoreUnknownServices = true;
            options.EnableDetailedErrors = false;
            options.Interceptors.Add<Faults>();
        });
        // Neither keeps anything of a call: one of each serves all.
        builder.Services.AddSingleton<Faults>();
        builder.Services.AddSingleton<OrderCalls>();
        builder.Services.AddGrpcReflection();
        builder.Services.AddGrpcHealthChecks();
    }

    public static void MapGrpcDoor(this WebApplication app)
    {
        app.MapGrpcService<OrderCalls>();
        app.MapGrpcReflectionService();
        app.MapGrpcHealthChecksService();
    }
}
