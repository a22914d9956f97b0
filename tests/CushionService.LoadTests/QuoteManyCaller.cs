using CushionService.Grpc.V1;
using Grpc.Core;
using Grpc.Net.Client;

namespace CushionService.LoadTests;

/// <summary>Sends orders as messages and reads the answers at the same time.</summary>
internal static class QuoteManyCaller
{
    public static async Task CallAsync(LoopbackHost host, int count, Action<Answer> heard)
    {
        using GrpcChannel channel = GrpcChannel.ForAddress(host.Grpc);
        using AsyncDuplexStreamingCall<QuoteManyRequest, QuoteManyResponse> call = new Grpc.V1.CushionService.CushionServiceClient(
            channel
        ).QuoteMany();
        Task sending = SendAsync(call.RequestStream, count);
        await foreach (QuoteManyResponse answer in call.ResponseStream.ReadAllAsync())
        {
            heard(new Answer(answer.Number, answer.Refusal is not null, answer.Quote?.Reference));
        }

        await sending;
    }

    private static async Task SendAsync(IClientStreamWriter<QuoteManyRequest> requests, int count)
    {
        for (int number = 1; number <= count; number++)
        {
            await requests.WriteAsync(new() { Order = Order(number) });
        }

        await requests.CompleteAsync();
    }

    private static Order Order(int number) =>
        new()
        {
            Reference = $"{number}",
            Units = Units.In,
            Effort = Effort.Quick,
            Cushions =
            {
                new Cushion
                {
                    Id = "pad",
                    Construction = Construction.KnifeEdge,
                    Outline = new Outline
                    {
                        Kind = OutlineKind.Rectangle,
                        Width = new Measure { Number = StreamRun.WidthOf(number) },
                        Depth = new Measure { Number = 15 },
                    },
                    Closure = new Closure { Kind = ClosureKind.Zipper },
                },
            },
            Fabrics =
            {
                new Fabric
                {
                    Id = "main",
                    Width = new Measure { Number = StreamRun.IsBad(number) ? -1 : 54 },
                    Sold = new Sale
                    {
                        Unit = SaleUnit.Yd,
                        Step = new Measure { Text = "1/8" },
                    },
                },
            },
        };
}
