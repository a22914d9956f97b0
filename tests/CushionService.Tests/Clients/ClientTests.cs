using System.Net;
using System.Runtime.CompilerServices;
using System.Text;
using CushionService.Client;
using CushionService.Tests.Hosting;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;

namespace CushionService.Tests.Clients;

/// <summary>The package for .NET against the real service: quote, refusal, stream, cancellation, and calls that are sent again.</summary>
public sealed class ClientTests(RunningService service) : IClassFixture<RunningService>
{
    private readonly CushionClient _client = new(service.Http);

    [Fact]
    public async Task A_quote_has_lengths_and_decimal_amounts()
    {
        QuoteAnswer quote = await _client.QuoteAsync(Bench(44));
        Assert.Equal(Units.In, quote.Units);
        Assert.True(quote.Yardage.Single().SoldLength > 0);
        Assert.Equal(SaleUnit.Yd, quote.Yardage.Single().SoldUnit);
        Assert.Equal("yd", SaleUnit.Yd.Word());
        Assert.Equal("hand-sewn", ClosureKind.HandSewn.Word());
        Assert.Equal("unknown", default(SaleUnit).Word());
        Assert.Equal(18.90m, quote.Cost!.Lines[0].UnitPrice);
        Assert.Equal(quote.Cost.Lines.Sum(line => line.Amount), quote.Cost.Total);
        Assert.Contains(quote.Cautions, caution => caution.Code == "infants");
    }

    [Theory]
    [InlineData("44")]
    [InlineData("44 in")]
    [InlineData("111.76 cm")]
    [InlineData("1 2/9 yd")]
    public async Task A_length_is_the_same_in_every_spelling(string width)
    {
        PiecesAnswer one = await _client.ListPiecesAsync(Bench(44)),
            other = await _client.ListPiecesAsync(Bench(width));
        Assert.Equal(one.Pieces.Select(piece => (piece.Id, piece.Width)), other.Pieces.Select(piece => (piece.Id, piece.Width)));
    }

    [Fact]
    public async Task A_refusal_has_every_violation()
    {
        RefusedException refused = await Assert.ThrowsAsync<RefusedException>(() => _client.QuoteAsync(Bench(0)));
        Assert.Equal("invalid-order", refused.Problem.Code);
        Assert.False(refused.MaySendAgain);
        Assert.Equal(
            ("/cushions/0/outline/width", "out-of-range"),
            refused.Problem.Violations.Select(one => (one.Pointer, one.Code)).Single()
        );
        Assert.Equal(2, refused.Problem.Violations.Single().Minimum);
    }

    [Fact]
    public async Task A_stream_answers_every_order_in_its_place()
    {
        const int Count = 300;
        long next = 1;
        await foreach (StreamedQuote quote in _client.QuoteManyAsync(ManyAsync(Count)))
        {
            Assert.Equal(next, quote.Number);
            Assert.Equal(next % 100 == 0, quote.Quote is null);
            Assert.Equal(quote.Quote is null ? next : null, quote.Problem?.Line);
            Assert.Equal(quote.Quote is null ? null : $"{next}", quote.Quote?.Reference);
            next++;
        }

        Assert.Equal(Count + 1, next);
    }

    [Fact]
    public async Task A_stream_may_be_cancelled()
    {
        using CancellationTokenSource stop = new();
        int heard = 0;
        await Assert.ThrowsAnyAsync<OperationCanceledException>(async () =>
        {
            await foreach (StreamedQuote _ in _client.QuoteManyAsync(ManyAsync(int.MaxValue), stop.Token))
            {
                if (++heard == 10)
                {
                    await stop.CancelAsync();
                }
            }
        });
        Assert.InRange(heard, 10, 74);
    }

    [Fact]
    public async Task A_connection_that_is_lost_goes_on_after_the_last_answer()
    {
        using HttpClient http = new(new LosingHandler { InnerHandler = new Passing(service.Http) })
        {
            BaseAddress = service.Http.BaseAddress,
        };
        CushionClient client = new(http);
        List<long> numbers = [];
        await foreach (StreamedQuote quote in client.QuoteManyAsync(ManyAsync(40)))
        {
            Assert.Equal($"{quote.Number}", quote.Quote!.Reference);
            numbers.Add(quote.Number);
        }

        Assert.Equal(Enumerable.Range(1, 40).Select(number => (long)number), numbers);
    }

    [Theory]
    [InlineData(HttpStatusCode.ServiceUnavailable)]
    [InlineData(HttpStatusCode.TooManyRequests)]
    public async Task A_rejected_call_is_sent_again_after_the_time_that_the_service_names(HttpStatusCode status)
    {
        Rejecting rejecting = new(status, 3);
        FakeTimeProvider clock = new() { AutoAdvanceAmount = TimeSpan.Zero };
        using HttpMessageInvoker http = new(new SendAgainHandler(5, clock) { InnerHandler = rejecting });
        Task<HttpResponseMessage> answer = http.SendAsync(new HttpRequestMessage(HttpMethod.Get, "http://localhost/"), default);
        for (int time = 1; time <= 3; time++)
        {
            await Task.Delay(50);
            Assert.Equal(time, rejecting.Calls);
            clock.Advance(TimeSpan.FromSeconds(6.9));
            await Task.Delay(50);
            Assert.Equal(time, rejecting.Calls);
            clock.Advance(TimeSpan.FromSeconds(0.2));
        }

        using HttpResponseMessage response = await answer;
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Equal(4, rejecting.Calls);
    }

    [Fact]
    public async Task A_host_takes_the_client_from_its_services()
    {
        await using ServiceProcess process = await ServiceProcess.StartAsync();
        ServiceCollection services = new();
        services.AddCushionClient(options => (options.Address, options.Language) = (process.Rest, "de"));
        await using ServiceProvider provider = services.BuildServiceProvider();
        CushionClient client = provider.GetRequiredService<CushionClient>();
        Assert.NotEmpty((await client.GetCatalogueAsync()).Constructions);
        RefusedException refused = await Assert.ThrowsAsync<RefusedException>(() => client.QuoteAsync(Bench(0)));
        Assert.DoesNotContain("must be", refused.Message, StringComparison.Ordinal);
    }

    private static async IAsyncEnumerable<Order> ManyAsync(int count, [EnumeratorCancellation] CancellationToken cancellation = default)
    {
        for (int number = 1; number <= count; number++)
        {
            cancellation.ThrowIfCancellationRequested();
            yield return Bench(number % 100 == 0 ? 0 : 20 + (number % 30)) with
            {
                Reference = $"{number}",
                Effort = Effort.Quick,
            };
            await Task.Yield();
        }
    }

    private static Order Bench(Length width) =>
        new()
        {
            Units = Units.In,
            Currency = "USD",
            Cushions =
            [
                new Cushion
                {
                    Id = "bench",
                    Construction = Construction.Boxed,
                    Outline = new Outline
                    {
                        Kind = OutlineKind.Rectangle,
                        Width = width,
                        Depth = "18 1/2",
                    },
                    Thickness = 3,
                    Closure = new Closure { Kind = ClosureKind.HandSewn, Side = Side.Back },
                },
            ],
            Fabrics =
            [
                new Fabric
                {
                    Id = "main",
                    Width = Length.Inches(54),
                    Sold = new Sale { Unit = SaleUnit.Yd, Step = "1/8" },
                    Price = new Price { Amount = 18.90m, Per = SaleUnit.Yd },
                },
            ],
        };

    // Passes calls to a client, since the host in memory has no handler of its own to give away.
    private sealed class Passing(HttpClient http) : HttpMessageHandler
    {
        protected override async Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
        {
            HttpRequestMessage copy = new(request.Method, request.RequestUri) { Content = request.Content };
            foreach ((string name, IEnumerable<string> values) in request.Headers)
            {
                copy.Headers.Add(name, values);
            }

            return await http.SendAsync(copy, HttpCompletionOption.ResponseHeadersRead, cancellationToken);
        }
    }

    // Ends the first answers after a few lines, as a connection that is lost does.
    private sealed class LosingHandler : DelegatingHandler
    {
        private int _calls;

        protected override async Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
        {
            HttpResponseMessage response = await base.SendAsync(request, cancellationToken);
            if (++_calls <= 3)
            {
                string whole = await response.Content.ReadAsStringAsync(cancellationToken);
                string[] lines = whole.Split('\n');
                response.Content = new StringContent(string.Join('\n', lines[..5]) + "\n", Encoding.UTF8, "application/x-ndjson");
            }

            return response;
        }
    }

    // Rejects the first calls.
    private sealed class Rejecting(HttpStatusCode status, int times) : HttpMessageHandler
    {
        public int Calls { get; private set; }

        protected override Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
        {
            HttpResponseMessage response = new(++Calls <= times ? status : HttpStatusCode.OK);
            response.Headers.RetryAfter = new System.Net.Http.Headers.RetryConditionHeaderValue(TimeSpan.FromSeconds(7));
            return Task.FromResult(response);
        }
    }
}
