using Microsoft.Extensions.FileProviders;
using Microsoft.Extensions.Primitives;

namespace CushionService.PriceBooks;

/// <summary>Reloads the shelf when a file of its folder changes. It looks every few seconds, since a mounted volume need not
/// tell.</summary>
internal sealed partial class PriceBookWatch(PriceBookShelf shelf, string folder, ILogger<PriceBookWatch> log) : IHostedService, IDisposable
{
    private readonly PhysicalFileProvider _files = new(folder) { UsePollingFileWatcher = true, UseActivePolling = true };
    private IDisposable? _watching;

    public Task StartAsync(CancellationToken cancellationToken)
    {
        _watching = ChangeToken.OnChange(() => _files.Watch("*.json"), Reload);
        return Task.CompletedTask;
    }

    public Task StopAsync(CancellationToken cancellationToken)
    {
        _watching?.Dispose();
        return Task.CompletedTask;
    }

    public void Dispose() => _files.Dispose();

    private void Reload()
    {
        try
        {
            IReadOnlyList<PriceBookFault> faults = shelf.Reload();
            foreach (PriceBookFault fault in faults)
            {
                LogRefused(log, fault.File, fault.Line, fault.Reason);
            }

            LogReloaded(log, folder, faults.Count);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            LogUnreadable(log, fault, folder);
        }
    }

    [LoggerMessage(LogLevel.Warning, "Price book refused, the version before it stays: {File}, line {Line}: {Reason}")]
    private static partial void LogRefused(ILogger log, string file, long line, string reason);

    [LoggerMessage(LogLevel.Information, "Price books of {Folder} reloaded with {Faults} faults")]
    private static partial void LogReloaded(ILogger log, string folder, int faults);

    [LoggerMessage(LogLevel.Warning, "Price books of {Folder} could not be read; those read before stay")]
    private static partial void LogUnreadable(ILogger log, Exception fault, string folder);
}
