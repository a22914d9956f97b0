using CushionService.Access;
using CushionService.Contract.Answers;
using CushionService.Rest.OpenApi;

namespace CushionService.Rest;

/// <summary>A call over REST: where it is, what it needs, who answers, and what the OpenAPI document says of
/// it.</summary>
internal sealed record Route
{
    private const string Json = "application/json";

    private Route(string method, string path, Scopes scope, RequestDelegate handler, OperationText text) =>
        (Method, Path, Scope, Handler, Text) = (method, path, scope, handler, text);

    /// <summary>The HTTP method.</summary>
    public string Method { get; private init; }

    /// <summary>The path below <c>/v1</c>.</summary>
    public string Path { get; }

    /// <summary>The scope that a caller needs.</summary>
    public Scopes Scope { get; }

    /// <summary>Answers a request.</summary>
    public RequestDelegate Handler { get; }

    /// <summary>What the document says of the call.</summary>
    public OperationText Text { get; }

    /// <summary>The parameters that say which part of the answer, or how.</summary>
    public PartParameter[] Parts { get; private init; } = [];

    /// <summary>Whether the document lists the call.</summary>
    public bool IsListed { get; private init; } = true;

    /// <summary>What a page with a publishable key may have of the call beyond its scope; null for nothing.</summary>
    public PageCallAttribute? OfPages { get; init; }

    /// <summary>The media types of the orders in the body; null for a call without a body.</summary>
    public string[]? Body { get; private init; }

    /// <summary>The record that answers, which gives the document its schema.</summary>
    public required Type Answer { get; init; }

    /// <summary>The media types of the answer, the preferred one first.</summary>
    public string[] Forms { get; private init; } = [Json];

    /// <summary>The statuses that come with a problem, beside those of rejected calls, which every call has.</summary>
    public required int[] Problems { get; init; }

    /// <summary>Whether a caller that holds the answer already gets 304 instead (RFC 9110, section 15.4.5).</summary>
    public bool IsCached { get; private init; }

    /// <summary>A call that takes an order in its body and answers with one record.</summary>
    /// <param name="path">The path below <c>/v1</c>.</param>
    /// <param name="scope">The scope that a caller needs.</param>
    /// <param name="endpoint">Answers a request, and knows its forms.</param>
    /// <param name="text">What the document says of it.</param>
    public static Route OfOrder<TAnswer>(string path, Scopes scope, OrderEndpoint<TAnswer> endpoint, OperationText text)
        where TAnswer : class =>
        new(HttpMethods.Post, path, scope, endpoint.HandleAsync, text)
        {
            Parts = endpoint.Parts,
            Body = [Json],
            Answer = typeof(TAnswer),
            Forms = endpoint.Forms,
            Problems = [400, 406, 413, 415, 422, 500],
        };

    /// <summary>A call that takes orders and answers with quotes, one on each line. What is wrong with an order is a
    /// line of the answer.</summary>
    /// <param name="path">The path below <c>/v1</c>.</param>
    /// <param name="scope">The scope that a caller needs.</param>
    /// <param name="handler">Answers a request.</param>
    /// <param name="text">What the document says of it.</param>
    public static Route OfOrderLines(string path, Scopes scope, RequestDelegate handler, OperationText text) =>
        new(HttpMethods.Post, path, scope, handler, text)
        {
            Body = QuoteStreamEndpoint.MediaTypes,
            Answer = typeof(QuoteAnswer),
            Forms = QuoteStreamEndpoint.MediaTypes,
            Problems = [406, 415, 422, 500],
        };

    /// <summary>A call whose order is in its query, so that caches can hold the answer; with GET, and with HEAD for the
    /// tag alone.</summary>
    /// <param name="path">The path below <c>/v1</c>.</param>
    /// <param name="scope">The scope that a caller needs.</param>
    /// <param name="handler">Answers a request of either method.</param>
    /// <param name="text">What the document says of it.</param>
    public static Route[] OfQuery(string path, Scopes scope, RequestDelegate handler, OperationText text)
    {
        Route get = new(HttpMethods.Get, path, scope, handler, text)
        {
            Answer = typeof(EstimateAnswer),
            Problems = [400, 406, 422, 500],
            IsCached = true,
        };
        return [get, get with { Method = HttpMethods.Head, IsListed = false }];
    }

    /// <summary>A call that takes nothing and has the same answer for every caller.</summary>
    /// <param name="path">The path below <c>/v1</c>.</param>
    /// <param name="scope">The scope that a caller needs.</param>
    /// <param name="handler">Answers a request.</param>
    /// <param name="text">What the document says of it.</param>
    public static Route[] OfList(string path, Scopes scope, RequestDelegate handler, OperationText text)
    {
        Route get = new(HttpMethods.Get, path, scope, handler, text)
        {
            Answer = typeof(CatalogueAnswer),
            Problems = [406, 422, 500],
            IsCached = true,
        };
        return [get, get with { Method = HttpMethods.Head, IsListed = false }];
    }
}
