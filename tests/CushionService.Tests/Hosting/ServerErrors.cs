using System.Collections.Concurrent;
using Microsoft.Extensions.Logging;

namespace CushionService.Tests.Hosting;

/// <summary>Keeps every error that the service logs, so that a test can fail on it.</summary>
internal sealed class ServerErrors : ILoggerProvider, ILogger
{
    private readonly ConcurrentQueue<string> _errors = new();

    public IReadOnlyCollection<string> Logged => _errors;

    public ILogger CreateLogger(string categoryName) => this;

    public IDisposable? BeginScope<TState>(TState state)
        where TState : notnull => null;

    public bool IsEnabled(LogLevel logLevel) => logLevel >= LogLevel.Error;

    public void Log<TState>(
        LogLevel logLevel,
        EventId eventId,
        TState state,
        Exception? exception,
        Func<TState, Exception?, string> formatter
    )
    {
        if (IsEnabled(logLevel))
        {
            _errors.Enqueue($"{formatter(state, exception)} {exception}");
        }
    }

    public void Dispose() { }
}
