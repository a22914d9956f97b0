using System.Text;
using System.Text.Json.Nodes;
using CushionService.Grpc.V1;
using CushionService.LoadTests.Floor;
using Google.Protobuf;

namespace CushionService.LoadTests.Generating;

/// <summary>The requests of the runs, ready to be sent.</summary>
internal static class Requests
{
    /// <summary>The query of one cushion.</summary>
    public const string Estimate =
        "/v1/estimate?units=in&construction=boxed&outline=rectangle&width=44&depth=18&thickness=3&fabricWidth=54";

    /// <summary>One cushion, at quick.</summary>
    public const string OneCushion = """
        {"reference":"nook-seat","units":"in","effort":"quick","cushions":[{"id":"seat","construction":"boxed",
          "outline":{"kind":"rectangle","width":22,"depth":20},
        "thickness":3,"closure":{"kind":"zipper","side":"back"}}],"fabrics":[{"id":"main","width":54,"selvedge":"1/2",
          "sold":{"unit":"yd","step":"1/8"}}]}
        """;

    /// <summary>The same cushion for gRPC.</summary>
    public static byte[] OneCushionMessage { get; } =
        new EstimateYardageRequest
        {
            Order = new Order
            {
                Reference = "nook-seat",
                Units = Units.In,
                Effort = Effort.Quick,
                Cushions =
                {
                    new Cushion
                    {
                        Id = "seat",
                        Construction = Construction.Boxed,
                        Outline = new Outline
                        {
                            Kind = OutlineKind.Rectangle,
                            Width = new Measure { Number = 22 },
                            Depth = new Measure { Number = 20 },
                        },
                        Thickness = new Measure { Number = 3 },
                        Closure = new Closure { Kind = ClosureKind.Zipper, Side = Side.Back },
                    },
                },
                Fabrics =
                {
                    new Fabric
                    {
                        Id = "main",
                        Width = new Measure { Number = 54 },
                        Selvedge = new Measure { Text = "1/2" },
                        Sold = new Sale
                        {
                            Unit = SaleUnit.Yd,
                            Step = new Measure { Text = "1/8" },
                        },
                    },
                },
            },
        }.ToByteArray();

    /// <summary>The floor's request.</summary>
    public static byte[] Floor { get; } = Post(FloorHost.Path, OneCushion);

    /// <summary>The widget's request.</summary>
    public static byte[] Yardage { get; } = Post("/v1/yardage", OneCushion);

    /// <summary>Whether the service lives.</summary>
    public static byte[] Live { get; } = Get("/health/live");

    /// <summary>The orders of the reading nook, in the mix in which shops send them: pages ask most, quotes weigh most.</summary>
    public static Func<int, byte[]> Mix()
    {
        // A book of prices is not mounted here.
        string[] orders = [.. Orders().Where(order => !order.Contains("\"priceBook\"", StringComparison.Ordinal))];
        byte[][] quotes = [.. orders.Select(order => Post("/v1/quotes", order))];
        byte[][] pieces = [.. orders.Select(order => Post("/v1/pieces", order))];
        byte[][] quick = [.. orders.Select(order => Post("/v1/yardage", Quick(order)))];
        byte[] estimate = Get(Estimate);
        return number =>
            (number % 10) switch
            {
                0 or 1 => quotes[number / 10 % quotes.Length],
                2 => pieces[number / 10 % pieces.Length],
                3 or 4 or 5 => estimate,
                6 or 7 => quick[number / 10 % quick.Length],
                _ => Yardage,
            };
    }

    /// <summary>The orders of the reading nook.</summary>
    public static IReadOnlyList<string> Orders() =>
        [
            .. typeof(Requests)
                .Assembly.GetManifestResourceNames()
                .Where(name => name.StartsWith("orders/", StringComparison.Ordinal))
                .Order()
                .Select(Read),
        ];

    /// <summary>A request for a resource.</summary>
    public static byte[] Get(string path, string headers = "") =>
        Encoding.UTF8.GetBytes($"GET {path} HTTP/1.1\r\nHost: 127.0.0.1\r\n{headers}\r\n");

    /// <summary>A request with an order.</summary>
    public static byte[] Post(string path, string body) => Post(path, Encoding.UTF8.GetBytes(body));

    /// <summary>A request with bytes.</summary>
    public static byte[] Post(string path, byte[] body, string type = "application/json", string headers = "") =>
        [
            .. Encoding.UTF8.GetBytes(
                $"POST {path} HTTP/1.1\r\nHost: 127.0.0.1\r\nContent-Type: {type}\r\nContent-Length: {body.Length}\r\n{headers}\r\n"
            ),
            .. body,
        ];

    private static string Quick(string order)
    {
        JsonNode changed = JsonNode.Parse(order)!;
        changed["effort"] = "quick";
        return changed.ToJsonString();
    }

    private static string Read(string name)
    {
        using StreamReader reader = new(typeof(Requests).Assembly.GetManifestResourceStream(name)!);
        return reader.ReadToEnd();
    }
}
