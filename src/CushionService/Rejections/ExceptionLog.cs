using System.Diagnostics;

namespace CushionService.Rejections;

/// <summary>What is logged of an exception: its type, its place and the trace, which is enough to find the cause in
/// code that always does the same for the same order. The text of an exception is never logged: it may quote the order,
/// and an order is nobody's but its sender's.</summary>
internal static partial class ExceptionLog
{
    private const string OwnCode = "CushionService.";

    /// <summary>Logs the exception that a call ended with.</summary>
    /// <param name="log">The log.</param>
    /// <param name="exception">The exception.</param>
    /// <param name="call">The route or the method of the call, without anything that the caller wrote.</param>
    /// <param name="traceId">The trace that the answer names.</param>
    public static void CallFailed(this ILogger log, Exception exception, string call, string traceId)
    {
        if (exception is OutOfMemoryException)
        {
            // No fault in the code, and the answer is not lost: the caller may come again.
            LogNoMemory(log, call, traceId);
        }
        else
        {
            LogCall(log, call, TypeOf(exception), PlaceOf(exception), traceId);
        }
    }

    /// <summary>Logs the exception that one order of a stream ended with.</summary>
    /// <param name="log">The log.</param>
    /// <param name="exception">The exception.</param>
    /// <param name="number">The order's line, or its place among the messages, from 1.</param>
    /// <param name="traceId">The trace of the stream.</param>
    public static void OrderFailed(this ILogger log, Exception exception, long number, string traceId) =>
        LogOrder(log, number, TypeOf(exception), PlaceOf(exception), traceId);

    /// <summary>The type of an exception, and those of its causes.</summary>
    public static string TypeOf(Exception exception) =>
        exception.InnerException is { } cause ? $"{exception.GetType()} caused by {TypeOf(cause)}" : $"{exception.GetType()}";

    /// <summary>The method where an exception came from: the innermost of ours, of the innermost cause. The framework's
    /// methods say less, since every part of the service calls them.</summary>
    public static string PlaceOf(Exception exception)
    {
        StackFrame[] frames = new StackTrace(exception.GetBaseException()).GetFrames();
        DiagnosticMethodInfo[] methods = [.. frames.Select(DiagnosticMethodInfo.Create).OfType<DiagnosticMethodInfo>()];
        DiagnosticMethodInfo? place =
            methods.FirstOrDefault(method => method.DeclaringTypeName?.StartsWith(OwnCode, StringComparison.Ordinal) == true)
            ?? methods.FirstOrDefault();
        return place is null ? "an unknown place" : $"{place.DeclaringTypeName}.{place.Name}";
    }

    [LoggerMessage(LogLevel.Warning, "{Call} had no memory for its answer, and was rejected as busy; trace {TraceId}")]
    private static partial void LogNoMemory(ILogger log, string call, string traceId);

    [LoggerMessage(LogLevel.Error, "{Call} failed with {Type} at {Place}; trace {TraceId}")]
    private static partial void LogCall(ILogger log, string call, string type, string place, string traceId);

    [LoggerMessage(LogLevel.Error, "Order {Number} of a stream failed with {Type} at {Place}; trace {TraceId}")]
    private static partial void LogOrder(ILogger log, long number, string type, string place, string traceId);
}
