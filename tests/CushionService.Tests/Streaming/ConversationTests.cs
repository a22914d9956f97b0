using System.Diagnostics;
using System.Text.Json.Nodes;

namespace CushionService.Tests.Streaming;

/// <summary>Both ways of a stream at the same time, over real sockets.</summary>
public sealed class ConversationTests
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Fact]
    public async Task An_answer_comes_before_the_next_order_is_sent_and_a_caller_who_goes_away_harms_nobody()
    {
        using Process process = Start();
        try
        {
            Uri service = await ListeningAsync(process).WaitAsync(Patience);
            using (Conversation gone = await Conversation.StartAsync(service))
            {
                await gone.SayAsync(NdjsonTests.Runner);
                Assert.NotNull(await gone.HearAsync().WaitAsync(Patience));
                await gone.SayAsync(NdjsonTests.Runner);
            }

            using Conversation talk = await Conversation.StartAsync(service);
            for (int number = 0; number < 3; number++)
            {
                await talk.SayAsync(NdjsonTests.Runner.Insert(1, $"\"reference\":\"{number}\","));
                Assert.Equal($"{number}", JsonNode.Parse((await talk.HearAsync().WaitAsync(Patience))!)!["reference"]!.GetValue<string>());
            }

            await talk.EndAsync();
            Assert.Null(await talk.HearAsync().WaitAsync(Patience));
        }
        finally
        {
            process.Kill(entireProcessTree: true);
            await process.WaitForExitAsync();
        }

        Assert.DoesNotContain(" ERR]", await process.StandardOutput.ReadToEndAsync(), StringComparison.Ordinal);
    }

    private static Process Start()
    {
        ProcessStartInfo start = new("dotnet", [typeof(Program).Assembly.Location]) { RedirectStandardOutput = true };
        start.Environment["ASPNETCORE_URLS"] = "http://127.0.0.1:0";
        start.Environment["GRPC_URLS"] = "http://127.0.0.1:0";
        return Process.Start(start)!;
    }

    private static async Task<Uri> ListeningAsync(Process process)
    {
        const string Said = "Now listening on: ";
        string? line;
        while ((line = await process.StandardOutput.ReadLineAsync()) is not null && !line.Contains(Said, StringComparison.Ordinal)) { }

        return new Uri(line![(line!.IndexOf(Said, StringComparison.Ordinal) + Said.Length)..].Trim());
    }
}
