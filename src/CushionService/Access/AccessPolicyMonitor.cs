using Microsoft.Extensions.Options;
using Microsoft.Extensions.Primitives;

namespace CushionService.Access;

/// <summary>Holds the register in force. A change of the configuration replaces it at once for the calls that come after; a change that is
/// wrong is told in the log, and the register that holds goes on holding.</summary>
internal sealed partial class AccessPolicyMonitor : IDisposable
{
    private readonly IConfiguration _section;
    private readonly ILogger _log;
    private readonly IDisposable _watch;
    private volatile AccessPolicy _current;

    public AccessPolicyMonitor(IConfiguration configuration, ILogger<AccessPolicyMonitor> log)
    {
        (_section, _log) = (configuration.GetSection(AccessOptions.Section), log);
        _current = Read();
        _watch = ChangeToken.OnChange(configuration.GetReloadToken, Renew);
    }

    /// <summary>The register in force.</summary>
    public AccessPolicy Current => _current;

    public void Dispose() => _watch.Dispose();

    private AccessPolicy Read() => AccessPolicy.Of(_section.Get<AccessOptions>() ?? new AccessOptions());

    private void Renew()
    {
        try
        {
            AccessPolicy next = Read();
            if (_current.IsGuarded && !next.IsGuarded)
            {
                // A file that is half written reads as empty: it must not open the house.
                LogKept(_log, "no key and no authority is left in it. Restart the service to open it to everyone.");
                return;
            }

            _current = next;
        }
        catch (Exception fault) when (fault is OptionsValidationException or InvalidOperationException)
        {
            LogKept(_log, fault.Message);
        }
    }

    [LoggerMessage(LogLevel.Error, "The new configuration of access is not taken, the old one holds: {Faults}")]
    private static partial void LogKept(ILogger log, string faults);
}
