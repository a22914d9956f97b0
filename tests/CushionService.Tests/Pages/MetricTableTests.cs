using System.Diagnostics.Metrics;
using System.Runtime.CompilerServices;
using System.Text;
using CushionService.Access;
using CushionService.Operations;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Pages;

/// <summary>The table of metrics is made of the instruments that a running service publishes.</summary>
public sealed class MetricTableTests(RunningService service) : IClassFixture<RunningService>
{
    [Fact]
    public async Task The_guide_lists_every_instrument()
    {
        // The instruments of orders come with the first order.
        using HttpResponseMessage answer = await service.PostAsync(
            "yardage",
            Repository.Read("src", "CushionService", "Demo", "pillow.json")
        );
        Assert.True(answer.IsSuccessStatusCode);
        // Their instruments come with the first failure, and with the first connection too many.
        RuntimeHelpers.RunClassConstructor(typeof(FailedAttempts).TypeHandle);
        RuntimeHelpers.RunClassConstructor(typeof(ConnectionLimits).TypeHandle);
        var rows = new SortedDictionary<string, string>(StringComparer.Ordinal);
        using MeterListener listener = new();
        listener.InstrumentPublished = (instrument, _) =>
        {
            if (instrument.Meter.Name == "CushionService")
            {
                rows[instrument.Name] = $"| `{instrument.Name}` | {instrument.Unit} | {instrument.Description} |\n";
            }
        };
        listener.Start();

        Assert.NotEmpty(rows);
        var table = new StringBuilder("| instrument | unit | what it counts |\n|---|---|---|\n");
        WrittenPart.IsUpToDate("src/CushionService/docs/operating.md", "metrics", table.AppendJoin("", rows.Values).ToString());
    }
}
