using Serilog.Events;

namespace CushionService.Operations;

/// <summary>Lines that the server writes at Critical when a caller breaks the protocol: thousands a second while one resets its calls as
/// fast as it can, and none that an operator could act on. The server ends such a connection by itself; its metrics count them.</summary>
internal static class ProtocolFaults
{
    private const string Server = "Microsoft.AspNetCore.Server.Kestrel";

    // The second follows from the first: the connection was ended while its calls were being reset.
    private static readonly string[] Names = ["Http2QueueOperationsExceeded", "ApplicationNeverCompleted"];

    /// <summary>Whether a line is one of them.</summary>
    /// <param name="line">A line of the log, of any source.</param>
    public static bool Has(LogEvent line) =>
        line.Properties.TryGetValue("SourceContext", out LogEventPropertyValue? source)
        && source is ScalarValue { Value: string category }
        && category.StartsWith(Server, StringComparison.Ordinal)
        && line.Properties.TryGetValue("EventId", out LogEventPropertyValue? id)
        && id is StructureValue named
        && named.Properties.Any(part => part is { Name: "Name", Value: ScalarValue { Value: string name } } && Names.Contains(name));
}
