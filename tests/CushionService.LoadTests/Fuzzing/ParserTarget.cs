using System.Text;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Desk;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Grpc.Mapping;
using CushionService.Json;
using CushionService.LoadTests.Generating;
using CushionService.Rest.Estimating;
using Google.Protobuf;
using Microsoft.AspNetCore.WebUtilities;
using SharpFuzz;

namespace CushionService.LoadTests.Fuzzing;

/// <summary>The parsers and the rules behind them, as a fuzzer drives them that is led by the branches an input takes (AFL++, through
/// SharpFuzz). Whatever the bytes, nothing is thrown. The first byte chooses the parser.</summary>
internal static class ParserTarget
{
    private const byte Json = (byte)'j',
        Message = (byte)'m',
        Query = (byte)'q',
        Text = (byte)'t';

    private static readonly OrderDesk Desk = new();

    /// <summary>Reads what the fuzzer sends until it stops.</summary>
    public static void Run() =>
        Fuzzer.OutOfProcess.Run(stream =>
        {
            using MemoryStream copy = new();
            stream.CopyTo(copy);
            Read(copy.ToArray());
        });

    /// <summary>Writes inputs to start from: the demonstration's orders in each form.</summary>
    public static int WriteSeeds(string folder)
    {
        Directory.CreateDirectory(folder);
        int number = 0;
        foreach (string order in Requests.Orders())
        {
            Write(Json, Encoding.UTF8.GetBytes(order));
            Write(Message, MessageText.Of(order));
        }

        Write(Json, Encoding.UTF8.GetBytes(Requests.OneCushion));
        Write(Message, Requests.OneCushionMessage);
        Write(Query, Encoding.UTF8.GetBytes(Requests.Estimate[Requests.Estimate.IndexOf('?')..]));
        foreach (string length in (string[])["15 1/2", "38.5 cm", "1 1/4 yd", "1.5e1", "12″"])
        {
            Write(Text, Encoding.UTF8.GetBytes(length));
        }

        return number;

        void Write(byte parser, byte[] input) => File.WriteAllBytes(Path.Combine(folder, $"{number++}"), [parser, .. input]);
    }

    private static void Read(byte[] input)
    {
        if (input.Length == 0 || input.Length > Limits.OrderBytes)
        {
            return;
        }

        byte[] rest = input[1..];
        switch (input[0])
        {
            case Json:
                Check(OrderText.Parse(rest));
                break;
            case Message:
                try
                {
                    Check(OrderMessage.Read(V1Request(rest).Order));
                }
                catch (InvalidProtocolBufferException)
                {
                    // The binding tells its caller so.
                }

                break;
            case Query:
                FlatOrder flat = new(QueryHelpers.ParseQuery(Encoding.UTF8.GetString(rest)));
                _ = EstimateTag.Of(flat, Language.English);
                Check(flat.Order);
                break;
            case Text:
                LengthText.TryParse(Encoding.UTF8.GetString(rest), LengthUnit.Inch, out _);
                break;
        }
    }

    private static global::CushionService.Grpc.V1.EstimateYardageRequest V1Request(byte[] bytes) =>
        global::CushionService.Grpc.V1.EstimateYardageRequest.Parser.ParseFrom(bytes);

    private static void Check(ReceivedOrder order) => Desk.Handle(order, Purposes.Validation, CancellationToken.None);
}
