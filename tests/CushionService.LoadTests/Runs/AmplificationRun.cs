using System.Globalization;
using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json.Nodes;

namespace CushionService.LoadTests.Runs;

/// <summary>How much a byte of a request makes the service send and work: for every call the largest of what was tried, without a key and
/// with one, as the service is shipped.</summary>
internal static class AmplificationRun
{
    private const string Key = "a key of the load tests";

    private static readonly (string Call, string Accept)[] s_calls =
    [
        ("/v1/validations", "application/json"),
        ("/v1/yardage", "application/json"),
        ("/v1/pieces", "application/json"),
        ("/v1/pieces", "application/pdf"),
        ("/v1/pieces", "text/html"),
        ("/v1/pieces", "image/vnd.dxf"),
        ("/v1/layouts", "application/json"),
        ("/v1/layouts?fabric=main", "image/svg+xml"),
        ("/v1/quotes", "application/json"),
        ("/v1/quotes", "text/html"),
        ("/v1/quotes", "application/pdf"),
        ("/v1/labels", "text/html"),
        ("/v1/labels", "application/pdf"),
        ("/v1/comparisons", "application/json"),
        ("/v1/fits", "application/json"),
        ("/v1/quotes/stream", "application/x-ndjson"),
    ];

    private static readonly string[] s_pages =
    [
        "/v1/catalogue",
        "/openapi/v1.json",
        "/",
        "/docs/",
        "/guide/",
        "/widget",
        "/v1/estimate?x=1",
    ];

    /// <summary>Orders that ask for much in few bytes.</summary>
    private static IEnumerable<(string Name, string Order)> Orders()
    {
        yield return ("one pillow", Order(Cushion("knife-edge", """{"kind":"rectangle","width":18,"depth":18}""", 1)));
        yield return ("500 discs", Order(Cushion("boxed", """{"kind":"circle","diameter":16}""", 500)));
        yield return ("50 welted tees, repeat 1/2 in", Order(Tee(50), ",\"repeat\":{\"length\":0.5,\"width\":0.5}"));
        yield return ("200 sorts of seats", Order(Many(200)));
        yield return ("faults alone", $$"""{"units":"in","cushions":[{{string.Join(',', Enumerable.Repeat("{}", 300))}}]}""");
        yield return ("unknown fields", "{" + string.Join(',', Enumerable.Range(0, 300).Select(i => $"\"a{i}\":1")) + "}");
    }

    public static async Task RunAsync()
    {
        Console.WriteLine(
            "call, accept, caller: the most bytes of answer, and the most processor time, to a byte of request, and the order that did"
        );
        foreach (bool keyed in (bool[])[false, true])
        {
            using LoopbackHost host = await LoopbackHost.StartShippedAsync(Key);
            using SocketsHttpHandler handler = new() { AutomaticDecompression = DecompressionMethods.None };
            using HttpClient client = new(handler) { BaseAddress = host.Rest, Timeout = TimeSpan.FromSeconds(60) };
            if (keyed)
            {
                client.DefaultRequestHeaders.Add("X-Api-Key", Key);
            }

            foreach ((string call, string accept) in s_calls)
            {
                await TellAsync(
                    host,
                    client,
                    $"POST {call} {accept}",
                    keyed,
                    Orders().Select(order => (order.Name, Post(call, accept, order.Order)))
                );
            }

            foreach (string page in s_pages)
            {
                await TellAsync(host, client, $"GET {page}", keyed, [(page, () => new HttpRequestMessage(HttpMethod.Get, page))]);
            }
        }
    }

    private static async Task TellAsync(
        LoopbackHost host,
        HttpClient client,
        string call,
        bool keyed,
        IEnumerable<(string Name, Func<HttpRequestMessage> Request)> requests
    )
    {
        (double Ratio, string By) most = default,
            work = default;
        long largest = 0;
        foreach ((string name, Func<HttpRequestMessage> make) in requests)
        {
            // The first is to compile what it takes.
            using (HttpRequestMessage first = make())
            using (await client.SendAsync(first)) { }

            using HttpRequestMessage request = make();
            long sent = Size(request);
            TimeSpan before = host.ProcessorTime;
            using HttpResponseMessage answer = await client.SendAsync(request);
            long bytes = (await answer.Content.ReadAsByteArrayAsync()).Length;
            double processor = (host.ProcessorTime - before).TotalMicroseconds;
            largest = Math.Max(largest, bytes);
            most = (double)bytes / sent > most.Ratio ? ((double)bytes / sent, $"{name}, {(int)answer.StatusCode}") : most;
            work = processor / sent > work.Ratio ? (processor / sent, $"{name}, {(int)answer.StatusCode}") : work;
        }

        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"| {call} | {(keyed ? "key" : "no key")} | {largest} B | {most.Ratio:0.0} ({most.By}) | {work.Ratio:0} µs ({work.By}) |"
            )
        );
    }

    // The request line and the headers count: a caller sends them.
    private static long Size(HttpRequestMessage request) =>
        request.RequestUri!.OriginalString.Length
        + request.Headers.ToString().Length
        + (request.Content?.Headers.ContentLength ?? 0)
        + (request.Content?.Headers.ToString().Length ?? 0)
        + 30;

    private static Func<HttpRequestMessage> Post(string call, string accept, string order) =>
        () =>
        {
            string type = call.EndsWith("stream", StringComparison.Ordinal) ? "application/x-ndjson" : "application/json";
            HttpRequestMessage request = new(HttpMethod.Post, call) { Content = new StringContent(Body(call, order), Encoding.UTF8, type) };
            request.Headers.Accept.Add(new MediaTypeWithQualityHeaderValue(accept));
            return request;
        };

    // A comparison has candidates beside its order; a fit has what is on hand.
    private static string Body(string call, string order)
    {
        if (call is not ("/v1/comparisons" or "/v1/fits") || JsonNode.Parse(order)!["fabrics"] is null)
        {
            return order;
        }

        JsonNode body = JsonNode.Parse(order)!;
        JsonNode fabric = body["fabrics"]![0]!;
        if (call == "/v1/fits")
        {
            fabric["onHand"] = JsonNode.Parse("""[{"width":54,"length":400}]""");
            return body.ToJsonString();
        }

        return new JsonObject
        {
            ["order"] = body,
            ["candidates"] = new JsonArray(new JsonObject { ["fabric"] = "main", ["options"] = new JsonArray(fabric.DeepClone()) }),
        }.ToJsonString();
    }

    private static string Order(string cushions, string fabric = "") =>
        $$"""
            {"units":"in","effort":"quick","cushions":[{{cushions}}],
             "fabrics":[{"id":"main","width":54,"sold":{"unit":"yd","step":"1/8"}{{fabric}}}]}
            """;

    private static string Cushion(string construction, string outline, int quantity, string more = "", string id = "c") =>
        $$"""
            {"id":"{{id}}","quantity":{{quantity}},"construction":"{{construction}}","outline":{{outline}},
             "closure":{"kind":"zipper","side":"back"}{{(construction == "boxed" ? ",\"thickness\":3" : "")}}{{more}}}
            """;

    private static string Tee(int quantity) =>
        Cushion(
            "boxed",
            """{"kind":"tee","width":24,"depth":20,"earWidth":4,"earDepth":5}""",
            quantity,
            ",\"edging\":{\"kind\":\"welt\",\"cordDiameter\":\"5/32\",\"cut\":\"bias\",\"at\":[\"top\"]}"
        );

    private static string Many(int count) =>
        string.Join(
            ',',
            Enumerable
                .Range(0, count)
                .Select(i =>
                    Cushion(
                        "boxed",
                        string.Create(CultureInfo.InvariantCulture, $$"""{"kind":"rectangle","width":{{20 + (i / 10.0)}},"depth":18}"""),
                        1,
                        id: $"c{i}"
                    )
                )
        );
}
