using Microsoft.Extensions.Options;
using Microsoft.Extensions.Primitives;

namespace CushionService.Access;

/// <summary>Has the policy in force. When the configuration changes, the new policy holds for the calls that come
/// after. A configuration that is wrong is reported in the log, and the policy stays as it was.</summary>
internal sealed partial class AccessPolicyMonitor : IDisposable
{
    private readonly IConfigurationSection _section;
    private readonly AccessFile? _file;
    private readonly ILogger _log;
    private readonly IDisposable _watch;
    private volatile AccessPolicy _current;

    /// <summary>Reads the configuration, and watches it from then on.</summary>
    /// <exception cref="OptionsValidationException">The configuration is wrong at the start.</exception>
    /// <param name="configuration">The service's; sources that can change are watched.</param>
    /// <param name="log">Gets why a new configuration is not taken.</param>
    public AccessPolicyMonitor(IConfiguration configuration, ILogger<AccessPolicyMonitor> log)
    {
        (_section, _log) = (configuration.GetSection(AccessOptions.Section), log);
        _file = (configuration as IConfigurationRoot)?.Providers.OfType<AccessFile>().FirstOrDefault();
        _current = Read();
        _watch = ChangeToken.OnChange(configuration.GetReloadToken, Reload);
    }

    /// <summary>The policy in force. A call takes it once, so that a change in between does not split it.</summary>
    public AccessPolicy Current => _current;

    /// <summary>Stops watching.</summary>
    public void Dispose() => _watch.Dispose();

    private AccessPolicy Read() => AccessPolicy.Of(_section);

    private void Reload()
    {
        if (_file?.Fault is { } fault)
        {
            LogKept(_log, fault);
            return;
        }

        try
        {
            AccessPolicy next = Read();
            if (_current.IsGuarded && !next.IsGuarded)
            {
                // A file that is half written reads as empty: it must not open the service to everyone.
                LogKept(_log, "no key and no authority is left in it. Restart the service to open it to everyone.");
                return;
            }

            _current = next;
        }
        catch (Exception exception) when (exception is OptionsValidationException or InvalidOperationException)
        {
            LogKept(_log, exception.Message);
        }
    }

    [LoggerMessage(LogLevel.Error, "The new configuration of access is not taken, the old one holds: {Faults}")]
    private static partial void LogKept(ILogger log, string faults);
}
