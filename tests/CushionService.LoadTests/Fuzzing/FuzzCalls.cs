using System.Text;
using CushionService.LoadTests.Generating;

namespace CushionService.LoadTests.Fuzzing;

/// <summary>The calls of a fuzzing worker, through either door in turn: every operation, format and language, with fields and parameters
/// that there are and that there are not. The same seed makes the same calls.</summary>
/// <param name="orders">The sound orders.</param>
/// <param name="messages">The same as messages.</param>
/// <param name="seed">Where the random numbers start.</param>
internal sealed class FuzzCalls(IReadOnlyList<string> orders, IReadOnlyList<byte[]> messages, int seed)
{
    /// <summary>The calls of gRPC; a request of the stream is a message as of the others.</summary>
    public static IReadOnlyList<string> Grpc { get; } =
    ["Validate", "ListPieces", "LayOut", "EstimateYardage", "Quote", "Compare", "Fit", "QuoteMany"];

    private static readonly (string Path, string[] Forms)[] Rest =
    [
        ("validations", ["application/json"]),
        ("pieces", ["application/json", "text/html", "application/pdf", "image/vnd.dxf", "text/csv"]),
        ("layouts", ["application/json", "image/svg+xml", "text/csv"]),
        ("yardage", ["application/json"]),
        ("quotes", ["application/json", "text/html", "application/pdf", "text/csv"]),
        ("comparisons", ["application/json"]),
        ("fits", ["application/json"]),
        ("labels", ["text/html", "application/pdf"]),
        ("pictures", ["image/svg+xml"]),
        ("quotes/stream", ["application/x-ndjson"]),
        ("estimate", ["application/json", "text/html"]),
    ];

    private static readonly string[] Queries =
    [
        "paper=a4",
        "paper=roll-36in",
        "paper=roll-0x1in",
        "detail=project",
        "detail=%00",
        "view=exploded",
        "fabric=main",
        "piece=bench%2Ftop",
        "cushion=%F0%9F%A7%B5",
        "fields=yardage,cost.total",
        "fields=.,,..,cost.",
        "fields=" + "pieces.",
        "colour=1",
        "%ff=%fe",
        "fields=%0d%0a",
    ];

    private static readonly string[] Languages = ["de", "fr-CA, es;q=0.5", "*", ";;q=x", "en;q=0, xx", "es"];

    private readonly Spoiler _spoiler = new(orders, seed);
    private readonly Random _random = new(seed);

    /// <summary>The next call through REST: what it is, and its bytes.</summary>
    public (string Name, byte[] Request, byte[] Body) OverRest()
    {
        (string path, string[] forms) = Rest[_random.Next(Rest.Length)];
        string query = _random.Next(3) == 0 ? "?" + One(Queries) + (_random.Next(4) == 0 ? "&" + One(Queries) : "") : "";
        string headers = $"Accept: {(_random.Next(20) == 0 ? "image/png" : One(forms))}\r\n";
        headers += _random.Next(2) == 0 ? $"Accept-Language: {One(Languages)}\r\n" : "";
        if (path == "estimate")
        {
            string all = Spoilt(Requests.Estimate) + (query.Length > 0 ? "&" + query[1..] : "");
            return (path, Requests.Get(all, headers), Encoding.UTF8.GetBytes(all));
        }

        bool isStream = path == "quotes/stream";
        byte[] body = isStream ? [.. _spoiler.Next(), (byte)'\n', .. _spoiler.Next()] : _spoiler.Next();
        string type = isStream ? "application/x-ndjson" : "application/json";
        return (path + query, Requests.Post("/v1/" + path + query, body, type, headers), body);
    }

    /// <summary>The next call through gRPC: its number in <see cref="Grpc"/>, and its message.</summary>
    public (int Call, byte[] Body) OverGrpc()
    {
        // A request message of any call has the order as its first field and the fields asked for as its second: the same serves all.
        byte[] body =
            _random.Next(2) == 0
                ? _spoiler.Scratch(messages[_random.Next(messages.Count)])
                : MessageText.Of(
                    Encoding.UTF8.GetString(_spoiler.Next()),
                    _random.Next(4) == 0 ? One(Queries).Split('=')[^1].Split(',') : []
                );
        return (_random.Next(Grpc.Count), body);
    }

    private string One(string[] list) => list[_random.Next(list.Length)];

    // Values of a query, changed one by one.
    private string Spoilt(string address)
    {
        string[] parts = address.Split('&');
        for (int times = _random.Next(4); times > 0; times--)
        {
            int at = _random.Next(1, parts.Length);
            string name = parts[at].Split('=')[0];
            parts[at] = _random.Next(6) switch
            {
                0 => name,
                1 => $"{name}={Uri.EscapeDataString(One(Spoiler.Texts))}",
                2 => $"{name}={_random.NextDouble() * Math.Pow(10, _random.Next(-5, 15)):R}",
                3 => parts[at] + "&" + parts[at],
                4 => $"{name}s=1",
                _ => $"{name}={new string('9', _random.Next(1, 500))}",
            };
        }

        return string.Join('&', parts);
    }
}
