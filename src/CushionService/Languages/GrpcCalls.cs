using Grpc.AspNetCore.Server;

namespace CushionService.Languages;

/// <summary>Tells the calls of gRPC from all others.</summary>
internal static class GrpcCalls
{
    /// <summary>Whether a request has found a method of gRPC. What it says of its own body decides nothing: any request to any path may
    /// say that it is one of gRPC.</summary>
    /// <param name="http">A request, once its endpoint is known.</param>
    public static bool IsGrpcCall(this HttpContext http) => http.GetEndpoint()?.Metadata.GetMetadata<GrpcMethodMetadata>() is not null;
}
