using Microsoft.Extensions.FileProviders;
using Microsoft.Extensions.Primitives;

namespace CushionService.PriceBooks;

/// <summary>Reloads the price books when a file of their folder changes. It looks every few seconds, since a mounted
/// volume need not raise events.</summary>
/// <param name="books">The books to reload.</param>
/// <param name="folder">The folder to watch; the same that the books come from.</param>
/// <param name="log">Gets what was refused, with file and line: the operator's data, and nothing of an order.</param>
internal sealed partial class PriceBookWatcher(PriceBookStore books, string folder, ILogger<PriceBookWatcher> log)
    : IHostedService,
        IDisposable
{
    private readonly PhysicalFileProvider _files = new(folder) { UsePollingFileWatcher = true, UseActivePolling = true };
    private IDisposable? _watching;

    /// <summary>Starts to watch.</summary>
    public Task StartAsync(CancellationToken cancellationToken)
    {
        _watching = ChangeToken.OnChange(() => _files.Watch("*.json"), Reload);
        return Task.CompletedTask;
    }

    /// <summary>Stops watching; the books stay.</summary>
    public Task StopAsync(CancellationToken cancellationToken)
    {
        _watching?.Dispose();
        return Task.CompletedTask;
    }

    /// <summary>Ends the timer that looks at the files.</summary>
    public void Dispose() => _files.Dispose();

    private void Reload()
    {
        try
        {
            IReadOnlyList<PriceBookError> errors = books.Reload();
            foreach (PriceBookError error in errors)
            {
                LogRefused(log, error.File, error.Line, error.Reason);
            }

            LogReloaded(log, folder, errors.Count);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            LogUnreadable(log, exception, folder);
        }
    }

    [LoggerMessage(LogLevel.Warning, "Price book refused, the version before it stays: {File}, line {Line}: {Reason}")]
    private static partial void LogRefused(ILogger log, string file, long line, string reason);

    [LoggerMessage(LogLevel.Information, "Price books of {Folder} reloaded with {Faults} faults")]
    private static partial void LogReloaded(ILogger log, string folder, int faults);

    [LoggerMessage(LogLevel.Warning, "Price books of {Folder} could not be read; those read before stay")]
    private static partial void LogUnreadable(ILogger log, Exception exception, string folder);
}
