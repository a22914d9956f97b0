using System.Net.Http.Headers;
using System.Runtime.CompilerServices;
using System.Text;
using System.Text.Json;

namespace CushionService.Client;

/// <summary>Sends orders in portions, each a stream of its own. Over HTTP/1.1 a client sends the whole body before it reads, while the
/// service reads no further than its answers are read: a portion is small enough to be on its way whole.</summary>
/// <param name="http">Sends the portions.</param>
internal sealed class OrderPortions(HttpClient http)
{
    private const string Lines = "application/x-ndjson";

    // What the buffers of a connection hold on every system.
    private const int MostBytes = 32 * 1024;
    private const int MostOrders = 64;

    // Without an answer in between, the connection is of no use.
    private const int MostLosses = 5;

    private long _number;

    /// <summary>Quotes the orders.</summary>
    public async IAsyncEnumerable<StreamedQuote> QuoteAsync(
        IAsyncEnumerable<Order> orders,
        [EnumeratorCancellation] CancellationToken cancellation
    )
    {
        Queue<byte[]> waiting = [];
        int bytes = 0;
        await foreach (Order order in orders.WithCancellation(cancellation).ConfigureAwait(false))
        {
            byte[] line = [.. JsonSerializer.SerializeToUtf8Bytes(order, CushionClient.Json), (byte)'\n'];
            if (waiting.Count > 0 && (waiting.Count == MostOrders || bytes + line.Length > MostBytes))
            {
                await foreach (StreamedQuote quote in SendAsync(waiting, cancellation).ConfigureAwait(false))
                {
                    yield return quote;
                }

                bytes = 0;
            }

            waiting.Enqueue(line);
            bytes += line.Length;
        }

        await foreach (StreamedQuote quote in SendAsync(waiting, cancellation).ConfigureAwait(false))
        {
            yield return quote;
        }
    }

    // Until each of them has its answer.
    private async IAsyncEnumerable<StreamedQuote> SendAsync(Queue<byte[]> waiting, [EnumeratorCancellation] CancellationToken cancellation)
    {
        int losses = 0;
        while (waiting.Count > 0)
        {
            using ByteArrayContent body = new([.. waiting.SelectMany(line => line)]);
            body.Headers.ContentType = new MediaTypeHeaderValue(Lines);
            using HttpRequestMessage request = new(HttpMethod.Post, "v1/quotes/stream") { Content = body };
            request.Headers.Accept.Add(new MediaTypeWithQualityHeaderValue(Lines));
            using HttpResponseMessage response = await http.SendAsync(request, HttpCompletionOption.ResponseHeadersRead, cancellation)
                .ConfigureAwait(false);
            if (!response.IsSuccessStatusCode)
            {
                await CushionClient.ReadAsync<QuoteAnswer>(response, cancellation).ConfigureAwait(false);
            }

            using StreamReader answers = new(await response.Content.ReadAsStreamAsync(cancellation).ConfigureAwait(false), Encoding.UTF8);
            while (waiting.Count > 0 && await NextAsync(answers, cancellation).ConfigureAwait(false) is { } line)
            {
                losses = 0;
                waiting.Dequeue();
                yield return Read(line);
            }

            if (waiting.Count > 0 && ++losses == MostLosses)
            {
                throw new IOException("The connection is lost again and again.");
            }
        }
    }

    // Null at the end, and where the connection is lost.
    private static async Task<string?> NextAsync(StreamReader answers, CancellationToken cancellation)
    {
        try
        {
            return await answers.ReadLineAsync(cancellation).ConfigureAwait(false);
        }
        catch (IOException)
        {
            return null;
        }
        catch (HttpRequestException)
        {
            return null;
        }
    }

    private StreamedQuote Read(string line)
    {
        using JsonDocument answer = JsonDocument.Parse(line);
        long number = ++_number;
        return answer.RootElement.TryGetProperty("violations", out _) && answer.RootElement.TryGetProperty("traceId", out _)
            ? new StreamedQuote(number, null, answer.Deserialize<Problem>(CushionClient.Json)! with { Line = number })
            : new StreamedQuote(number, answer.Deserialize<QuoteAnswer>(CushionClient.Json), null);
    }
}
