using System.Net;
using System.Net.Http.Headers;
using CushionService.Grpc.V1;
using CushionService.Tests.Access;
using CushionService.Tests.Hosting;
using Google.Protobuf;
using Google.Protobuf.WellKnownTypes;
using Grpc.Core;
using Grpc.Health.V1;

namespace CushionService.Tests.Grpc;

/// <summary>Fields, compression, health by name and gRPC-Web.</summary>
public sealed class MannerTests(RunningService service) : IClassFixture<RunningService>
{
    [Fact]
    public async Task A_mask_keeps_the_fields_that_it_names()
    {
        QuoteResponse whole = await service.Calls.QuoteAsync(new() { Order = Callers.PillowMessage });
        QuoteResponse slim = await service.Calls.QuoteAsync(
            new() { Order = Callers.PillowMessage, Fields = FieldMask.FromStringEnumerable<QuoteResponse>(["yardage"]) }
        );
        QuoteResponse inner = await service.Calls.QuoteAsync(
            new()
            {
                Order = Callers.PillowMessage,
                Fields = new FieldMask { Paths = { "yardage.sold_length", "pieces.marks.kind", "units" } },
            }
        );

        Assert.Equal(new QuoteResponse { Yardage = { whole.Yardage } }, slim);
        Assert.Equal(
            new QuoteResponse
            {
                Units = whole.Units,
                Yardage = { whole.Yardage.Select(line => new YardageLine { SoldLength = line.SoldLength }) },
                Pieces =
                {
                    whole.Pieces.Select(piece => new Piece { Marks = { piece.Marks.Select(mark => new Mark { Kind = mark.Kind }) } }),
                },
            },
            inner
        );
        Assert.Equal(whole, await service.Calls.QuoteAsync(new() { Order = Callers.PillowMessage, Fields = new() }));
    }

    [Theory]
    [InlineData("price")]
    [InlineData("soldLength")]
    [InlineData("cost.total.units")]
    [InlineData("yardage.")]
    public async Task A_mask_of_what_there_is_not_is_refused(string path)
    {
        (StatusCode code, Metadata trailers) = await Callers.StatusAsync(
            service.Calls.QuoteAsync(
                new()
                {
                    Order = Callers.PillowMessage,
                    Fields = new FieldMask { Paths = { path } },
                }
            )
        );
        Google.Rpc.Status told = Google.Rpc.Status.Parser.ParseFrom(trailers.GetValueBytes("grpc-status-details-bin"));

        Assert.Equal(StatusCode.InvalidArgument, code);
        Assert.Contains(told.Details, detail => detail.Is(Google.Rpc.BadRequest.Descriptor));
    }

    [Fact]
    public async Task A_message_of_a_stream_and_the_catalogue_take_masks_too()
    {
        using AsyncDuplexStreamingCall<QuoteManyRequest, QuoteManyResponse> call = service.Calls.QuoteMany();
        FieldMask[] masks = [new() { Paths = { "yardage.sold_unit" } }, new() { Paths = { "nothing" } }, new()];
        foreach (FieldMask mask in masks)
        {
            await call.RequestStream.WriteAsync(new() { Order = Callers.PillowMessage, Fields = mask });
        }

        await call.RequestStream.CompleteAsync();
        List<QuoteManyResponse> answers = [];
        await foreach (QuoteManyResponse answer in call.ResponseStream.ReadAllAsync())
        {
            answers.Add(answer);
        }

        Assert.Equal(new QuoteResponse { Yardage = { new YardageLine { SoldUnit = SaleUnit.Yd } } }, answers[0].Quote);
        Assert.Equal("unknown-field", answers[1].Refusal.Violations.Single().Code);
        Assert.NotEmpty(answers[2].Quote.Steps);
        GetCatalogueResponse list = await service.Calls.GetCatalogueAsync(new() { Fields = new() { Paths = { "engine" } } });
        Assert.Equal(new GetCatalogueResponse { Engine = answers[2].Quote.Engine }, list);
    }

    [Fact]
    public async Task A_large_answer_is_compressed_and_a_small_one_is_not()
    {
        Assert.True(await IsCompressedAsync("GetCatalogue", new GetCatalogueRequest()));
        Assert.False(await IsCompressedAsync("EstimateYardage", new EstimateYardageRequest { Order = Callers.PillowMessage }));
    }

    [Theory]
    [InlineData("")]
    [InlineData("cushionservice.v1.CushionService")]
    public async Task Health_is_asked_for_the_whole_or_by_name(string name)
    {
        HealthCheckResponse health = await new Health.HealthClient(service.Channel).CheckAsync(new() { Service = name });

        Assert.Equal(HealthCheckResponse.Types.ServingStatus.Serving, health.Status);
    }

    [Fact]
    public async Task A_browser_speaks_gRPC_Web()
    {
        using HttpRequestMessage request = Framed("EstimateYardage", new EstimateYardageRequest { Order = Callers.PillowMessage });
        request.Content!.Headers.ContentType = new MediaTypeHeaderValue("application/grpc-web+proto");
        request.Version = HttpVersion.Version11;
        using HttpResponseMessage response = await service.Http.SendAsync(request);
        byte[] body = await response.Content.ReadAsByteArrayAsync();
        int length = (body[1] << 24) | (body[2] << 16) | (body[3] << 8) | body[4];

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Equal(0.625, EstimateYardageResponse.Parser.ParseFrom(body, 5, length).Yardage.Single().SoldLength);
        // The trailers are the last frame, marked by the highest bit (gRPC-Web protocol).
        Assert.Equal(0x80, body[5 + length]);
        Assert.Contains("grpc-status: 0", System.Text.Encoding.ASCII.GetString(body[(5 + length)..]), StringComparison.OrdinalIgnoreCase);
    }

    private async Task<bool> IsCompressedAsync(string call, IMessage message)
    {
        using HttpRequestMessage request = Framed(call, message);
        request.Headers.Add("grpc-accept-encoding", "identity,gzip");
        request.Headers.TE.ParseAdd("trailers");
        using HttpResponseMessage response = await service.Http.SendAsync(request);
        byte[] body = await response.Content.ReadAsByteArrayAsync();
        return body[0] == 1;
    }

    [Theory]
    [InlineData("gzip")]
    [InlineData("deflate")]
    public async Task A_message_that_does_not_decompress_is_the_callers_fault(string encoding)
    {
        using HttpRequestMessage request = Framed("EstimateYardage", new EstimateYardageRequest { Order = Callers.PillowMessage });
        byte[] body = await request.Content!.ReadAsByteArrayAsync();
        // It says that it is compressed, and is not.
        body[0] = 1;
        request.Content = new ByteArrayContent(body) { Headers = { ContentType = new MediaTypeHeaderValue("application/grpc") } };
        request.Headers.Add("grpc-encoding", encoding);
        request.Headers.TE.ParseAdd("trailers");
        using HttpResponseMessage response = await service.Http.SendAsync(request);
        await response.Content.ReadAsByteArrayAsync();
        HttpHeaders status = response.Headers.Contains("grpc-status") ? response.Headers : response.TrailingHeaders;

        Assert.Equal("3", status.GetValues("grpc-status").Single());
        Assert.StartsWith("The bytes are no message", status.GetValues("grpc-message").Single(), StringComparison.Ordinal);
    }

    private static HttpRequestMessage Framed(string call, IMessage message)
    {
        byte[] bytes = message.ToByteArray();
        byte[] body = [0, (byte)(bytes.Length >> 24), (byte)(bytes.Length >> 16), (byte)(bytes.Length >> 8), (byte)bytes.Length, .. bytes];
        HttpRequestMessage request = new(HttpMethod.Post, $"/cushionservice.v1.CushionService/{call}")
        {
            Content = new ByteArrayContent(body),
            Version = HttpVersion.Version20,
        };
        request.Content.Headers.ContentType = new MediaTypeHeaderValue("application/grpc");
        return request;
    }
}
