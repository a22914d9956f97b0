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
    // Between two looks at files that were refused.
    private static readonly TimeSpan Pause = TimeSpan.FromSeconds(15);

    private readonly PhysicalFileProvider _files = new(folder) { UsePollingFileWatcher = true, UseActivePolling = true };
    private IDisposable? _watching;
    private Timer? _again;

    /// <summary>Starts to watch.</summary>
    public Task StartAsync(CancellationToken cancellationToken)
    {
        _watching = ChangeToken.OnChange(() => _files.Watch("*.json"), Reload);
        _again = new Timer(TryAgain, null, Pause, Pause);
        return Task.CompletedTask;
    }

    /// <summary>Stops watching; the books stay.</summary>
    public Task StopAsync(CancellationToken cancellationToken)
    {
        _watching?.Dispose();
        _again?.Dispose();
        return Task.CompletedTask;
    }

    /// <summary>Ends the timers that look at the files.</summary>
    public void Dispose()
    {
        _again?.Dispose();
        _files.Dispose();
    }

    // A watcher that throws is called no more, and nobody hears of it.
    private void Reload()
    {
        try
        {
            ReloadAndTell();
        }
        catch (Exception exception)
        {
            LogFailed(log, folder, exception.GetType());
        }
    }

    private void ReloadAndTell()
    {
        IReadOnlyList<PriceBookError> before = books.Errors,
            errors = books.Reload();
        if (errors.SequenceEqual(before) && errors.Count > 0)
        {
            return;
        }

        foreach (PriceBookError error in errors)
        {
            LogRefused(log, error.File, error.Line, error.Reason);
        }

        LogReloaded(log, folder, errors.Count);
    }

    // A file that could not be read may be readable without having changed.
    private void TryAgain(object? state)
    {
        if (books.Errors.Count > 0)
        {
            Reload();
        }
    }

    [LoggerMessage(LogLevel.Warning, "Price book refused, the version before it stays: {File}, line {Line}: {Reason}")]
    private static partial void LogRefused(ILogger log, string file, long line, string reason);

    [LoggerMessage(LogLevel.Error, "Price books of {Folder} could not be reloaded, those before stay: {Reason}")]
    private static partial void LogFailed(ILogger log, string folder, Type reason);

    [LoggerMessage(LogLevel.Information, "Price books of {Folder} reloaded with {Faults} faults")]
    private static partial void LogReloaded(ILogger log, string folder, int faults);
}
