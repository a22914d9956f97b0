using System.Net;
using System.Text.Json;
using CushionService.Access;
using CushionService.Tests.Hosting;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace CushionService.Tests.Access;

/// <summary>Keys come and go while the service runs, and are written down nowhere.</summary>
public sealed class KeyRotationTests : IDisposable
{
    private static readonly string Old = Callers.NewKey(),
        New = Callers.NewKey();

    private readonly string _folder = Directory.CreateTempSubdirectory("keys").FullName;
    private readonly AllLogs _logs = new();
    private readonly RunningService _service;

    public KeyRotationTests()
    {
        Write(Old);
        _service = new(
            services => services.AddSingleton<ILoggerProvider>(_logs),
            true,
            ("Access:File", Path.Combine(_folder, "keys.json"))
        );
    }

    [Fact]
    public async Task A_key_is_exchanged_without_a_restart_and_never_logged()
    {
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(Old));
        Assert.Equal(HttpStatusCode.Unauthorized, await StatusAsync(New));

        Write(Old, New);
        await UntilAsync(New, HttpStatusCode.OK);
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(Old));

        Write(New);
        await UntilAsync(Old, HttpStatusCode.Unauthorized);
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(New));

        Assert.NotEmpty(_logs.Lines);
        Assert.DoesNotContain(
            _logs.Lines,
            line => line.Contains(Old, StringComparison.Ordinal) || line.Contains(New, StringComparison.Ordinal)
        );
    }

    [Fact]
    public async Task A_register_that_is_wrong_is_not_taken()
    {
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(Old));
        File.WriteAllText(
            Path.Combine(_folder, "keys.json"),
            """{"Access":{"Keys":[{"Name":"shop","Sha256":"abc"},{"Sha256":"def","Scopes":["everything"]}]}}"""
        );
        string reported = await UntilReportedAsync("Access:Keys");
        Assert.Contains("Access:Keys:0:Sha256", reported, StringComparison.Ordinal);
        Assert.Contains("Access:Keys:1:Name", reported, StringComparison.Ordinal);
        Assert.Contains("everything", reported, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(Old));
    }

    [Theory]
    [InlineData("{}", "no key and no authority is left in it")]
    [InlineData("{\n\"Access\":{\"Keys\":[", "keys.json, line 2: this is not JSON")]
    public async Task A_file_that_is_empty_or_half_written_opens_nothing_and_is_reported(string content, string reported)
    {
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(Old));
        File.WriteAllText(Path.Combine(_folder, "keys.json"), content);
        await UntilReportedAsync(reported);
        using HttpResponseMessage anonymous = await _service.SendAsync("quotes", null);

        Assert.Equal(HttpStatusCode.Unauthorized, anonymous.StatusCode);
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(Old));
    }

    public void Dispose()
    {
        _service.Dispose();
        Directory.Delete(_folder, recursive: true);
    }

    private void Write(params string[] keys) =>
        File.WriteAllText(
            Path.Combine(_folder, "keys.json"),
            JsonSerializer.Serialize(
                new
                {
                    Serilog = new
                    {
                        MinimumLevel = new
                        {
                            Default = "Verbose",
                            Override = new Dictionary<string, string> { ["Microsoft.AspNetCore"] = "Verbose", ["Grpc"] = "Verbose" },
                        },
                    },
                    Access = new
                    {
                        Keys = keys.Select(key => new
                        {
                            Name = "shop",
                            Sha256 = AccessPolicy.DigestOf(key),
                            Scopes = new[] { "quote" },
                        }),
                    },
                }
            )
        );

    private async Task<string> UntilReportedAsync(string why)
    {
        DateTime late = DateTime.UtcNow.AddSeconds(20);
        while (true)
        {
            string? reported = _logs.Lines.FirstOrDefault(line =>
                line.Contains("the old one holds", StringComparison.Ordinal) && line.Contains(why, StringComparison.Ordinal)
            );
            if (reported is not null)
            {
                return reported;
            }

            Assert.True(DateTime.UtcNow < late, "The fault was not reported.");
            await Task.Delay(50);
        }
    }

    private async Task<HttpStatusCode> StatusAsync(string key)
    {
        using HttpResponseMessage response = await _service.SendAsync("quotes", key);
        return response.StatusCode;
    }

    private async Task UntilAsync(string key, HttpStatusCode status)
    {
        DateTime late = DateTime.UtcNow.AddSeconds(20);
        while (await StatusAsync(key) != status)
        {
            Assert.True(DateTime.UtcNow < late, $"The key did not come to {status}.");
            await Task.Delay(50);
        }
    }

    private sealed class AllLogs : ILoggerProvider, ILogger
    {
        private readonly System.Collections.Concurrent.ConcurrentQueue<string> _lines = new();

        public IReadOnlyCollection<string> Lines => _lines;

        public ILogger CreateLogger(string categoryName) => this;

        public IDisposable? BeginScope<TState>(TState state)
            where TState : notnull => null;

        public bool IsEnabled(LogLevel logLevel) => true;

        public void Log<TState>(
            LogLevel logLevel,
            EventId eventId,
            TState state,
            Exception? exception,
            Func<TState, Exception?, string> formatter
        ) => _lines.Enqueue($"{formatter(state, exception)} {exception}");

        public void Dispose() { }
    }
}
