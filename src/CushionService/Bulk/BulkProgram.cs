using System.Globalization;
using System.Runtime.InteropServices;
using CushionService.Admission;
using CushionService.Desk;
using CushionService.PriceBooks;

namespace CushionService.Bulk;

/// <summary>Quotes a file of orders into a file of answers, without a call: <c>--bulk orders.ndjson answers.ndjson</c>. Started again
/// after an end of any kind, it goes on where it was.</summary>
internal static class BulkProgram
{
    /// <summary>The option of the command line; the two files come after it, and then perhaps <see cref="Broker"/>.</summary>
    public const string Option = "--bulk";

    /// <summary>The option before the address of a NATS server, whose workers then quote the orders.</summary>
    public const string Broker = "--broker";

    // EX_USAGE of sysexits.h, as command lines that cannot be read are reported.
    private const int Wrong = 64;

    private const string Usage =
        "CushionService --bulk ORDERS ANSWERS [--broker nats://HOST:4222]\n"
        + "ORDERS is NDJSON (an order a line) or CSV (the parameters of GET /v1/estimate as columns, and reference); ANSWERS is NDJSON.";

    /// <summary>Quotes the file.</summary>
    /// <param name="args">The command line after <see cref="Option"/>.</param>
    /// <param name="output">Where to report.</param>
    /// <returns>0 when every order has its line; 1 when it was stopped before; 64 for a command line that cannot be read.</returns>
    public static async Task<int> RunAsync(string[] args, TextWriter output)
    {
        if (args is not ([_, _] or [_, _, Broker, _]) || !File.Exists(args[0]))
        {
            await output.WriteLineAsync(Usage);
            return Wrong;
        }

        using CancellationTokenSource stop = new();
        using PosixSignalRegistration terminated = PosixSignalRegistration.Create(PosixSignal.SIGTERM, Stop);
        using PosixSignalRegistration interrupted = PosixSignalRegistration.Create(PosixSignal.SIGINT, Stop);
        await using WebApplication services = Services();
        using AnswerFile answers = AnswerFile.Open(args[1]);
        long before = answers.Lines;
        bool whole = true;
        try
        {
            BulkRun run = new(services.Services.GetRequiredService<BulkDesk>(), answers);
            string? url = args is [_, _, _, string given] ? given : null;
            await (url is null ? run.QuoteHereAsync(args[0], stop.Token) : run.QuoteThereAsync(args[0], url, stop.Token));
        }
        catch (OperationCanceledException) when (stop.IsCancellationRequested)
        {
            whole = false;
        }

        string counts = string.Create(
            CultureInfo.InvariantCulture,
            $"{answers.Lines} answers, {answers.Lines - before} of them new, {answers.Problems} of these problems."
        );
        await output.WriteLineAsync(whole ? counts : counts + " Stopped; the same command goes on.");
        return whole ? 0 : 1;

        void Stop(PosixSignalContext signal)
        {
            // Otherwise the runtime would end the process at once, and lose the answers that wait in memory.
            signal.Cancel = true;
            stop.Cancel();
        }
    }

    // The host is built for its configuration and its price books, and never started.
    private static WebApplication Services()
    {
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder(
            new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory }
        );
        builder.AddPriceBooks();
        builder.AddAdmission();
        builder.Services.AddSingleton<OrderDesk>();
        builder.Services.AddSingleton<BulkDesk>();
        return builder.Build();
    }
}
