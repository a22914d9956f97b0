namespace CushionService.Grpc;

/// <summary>What the gRPC door logs.</summary>
internal static partial class FaultLog
{
    [LoggerMessage(LogLevel.Error, "{Method} failed")]
    public static partial void Failed(this ILogger log, Exception fault, string method);
}
