using System.Net.Http.Headers;
using System.Net.Http.Json;
using System.Runtime.CompilerServices;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace CushionService.Client;

/// <summary>Calls the service. May be used by any number of threads at the same time.</summary>
/// <param name="http">Sends the calls; its base address is the service's. <see cref="Create"/> and <c>AddCushionClient</c> make one that
/// sends rejected calls again.</param>
public sealed class CushionClient(HttpClient http)
{
    /// <summary>How the contract's records are written and read.</summary>
    public static JsonSerializerOptions Json { get; } = MakeJson();

    /// <summary>A client of its own, for a program without dependency injection.</summary>
    /// <param name="options">Where the service is.</param>
    public static CushionClient Create(CushionClientOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        SendAgainHandler again = new(options.Attempts, TimeProvider.System) { InnerHandler = new SocketsHttpHandler() };
        HttpClient http = new(again);
        Prepare(http, options);
        return new CushionClient(http);
    }

    /// <summary>Pieces, layouts, yardage, materials, cost and steps.</summary>
    /// <exception cref="RefusedException">The order was refused.</exception>
    public Task<QuoteAnswer> QuoteAsync(Order order, CancellationToken cancellation = default) =>
        PostAsync<QuoteAnswer>("v1/quotes", order, cancellation);

    /// <summary>Every rule that an order breaks, and all that is unwise.</summary>
    /// <exception cref="RefusedException">The order could not be read.</exception>
    public Task<ValidationAnswer> ValidateAsync(Order order, CancellationToken cancellation = default) =>
        PostAsync<ValidationAnswer>("v1/validations", order, cancellation);

    /// <summary>What to cut, mark and sew together.</summary>
    /// <exception cref="RefusedException">The order was refused.</exception>
    public Task<PiecesAnswer> ListPiecesAsync(Order order, CancellationToken cancellation = default) =>
        PostAsync<PiecesAnswer>("v1/pieces", order, cancellation);

    /// <summary>A layout for each fabric.</summary>
    /// <exception cref="RefusedException">The order was refused.</exception>
    public Task<LayoutsAnswer> LayOutAsync(Order order, CancellationToken cancellation = default) =>
        PostAsync<LayoutsAnswer>("v1/layouts", order, cancellation);

    /// <summary>How much of each fabric to buy.</summary>
    /// <exception cref="RefusedException">The order was refused.</exception>
    public Task<YardageAnswer> EstimateYardageAsync(Order order, CancellationToken cancellation = default) =>
        PostAsync<YardageAnswer>("v1/yardage", order, cancellation);

    /// <summary>The order with other fabrics, cheapest first.</summary>
    /// <exception cref="RefusedException">The order was refused.</exception>
    public Task<ComparisonAnswer> CompareAsync(Order order, CancellationToken cancellation = default) =>
        PostAsync<ComparisonAnswer>("v1/comparisons", order, cancellation);

    /// <summary>Whether the order can be cut from the fabric on hand.</summary>
    /// <exception cref="RefusedException">The order was refused.</exception>
    public Task<FitAnswer> FitAsync(Order order, CancellationToken cancellation = default) =>
        PostAsync<FitAnswer>("v1/fits", order, cancellation);

    /// <summary>What can be ordered.</summary>
    public async Task<CatalogueAnswer> GetCatalogueAsync(CancellationToken cancellation = default)
    {
        using HttpResponseMessage response = await http.GetAsync(new Uri("v1/catalogue", UriKind.Relative), cancellation)
            .ConfigureAwait(false);
        return await ReadAsync<CatalogueAnswer>(response, cancellation).ConfigureAwait(false);
    }

    /// <summary>Quotes any number of orders, in order. A refused order is an entry of its own and does not end the stream; a connection
    /// that is lost is made anew, and goes on after the last answer.</summary>
    /// <param name="orders">The orders; they are read a few ahead of the answers.</param>
    /// <param name="cancellation">Ends the stream.</param>
    /// <exception cref="RefusedException">The call itself was refused, such as for want of a scope.</exception>
    public async IAsyncEnumerable<StreamedQuote> QuoteManyAsync(
        IAsyncEnumerable<Order> orders,
        [EnumeratorCancellation] CancellationToken cancellation = default
    )
    {
        ArgumentNullException.ThrowIfNull(orders);
        OrderPortions portions = new(http);
        await foreach (StreamedQuote quote in portions.QuoteAsync(orders, cancellation).ConfigureAwait(false))
        {
            yield return quote;
        }
    }

    internal static void Prepare(HttpClient http, CushionClientOptions options)
    {
        // Paths are relative to it.
        http.BaseAddress = new Uri(options.Address.ToString().TrimEnd('/') + "/");
        http.Timeout = options.Timeout * options.Attempts;
        http.DefaultRequestHeaders.Accept.Add(new MediaTypeWithQualityHeaderValue("application/json"));
        if (options.Key is { } key)
        {
            http.DefaultRequestHeaders.Add("X-Api-Key", key);
        }

        if (options.Language is { } language)
        {
            http.DefaultRequestHeaders.AcceptLanguage.Add(new StringWithQualityHeaderValue(language));
        }
    }

    internal static async Task<T> ReadAsync<T>(HttpResponseMessage response, CancellationToken cancellation)
    {
        if (response.IsSuccessStatusCode)
        {
            return (await response.Content.ReadFromJsonAsync<T>(Json, cancellation).ConfigureAwait(false))!;
        }

        // What a proxy answers need not be a problem of the service.
        if (response.Content.Headers.ContentType?.MediaType != "application/problem+json")
        {
            response.EnsureSuccessStatusCode();
        }

        throw new RefusedException((await response.Content.ReadFromJsonAsync<Problem>(Json, cancellation).ConfigureAwait(false))!);
    }

    private async Task<T> PostAsync<T>(string path, Order order, CancellationToken cancellation)
    {
        // Of known length, so that it can be sent again.
        using ByteArrayContent body = new(JsonSerializer.SerializeToUtf8Bytes(order, Json));
        body.Headers.ContentType = new MediaTypeHeaderValue("application/json");
        using HttpResponseMessage response = await http.PostAsync(new Uri(path, UriKind.Relative), body, cancellation)
            .ConfigureAwait(false);
        return await ReadAsync<T>(response, cancellation).ConfigureAwait(false);
    }

    private static JsonSerializerOptions MakeJson()
    {
        JsonSerializerOptions options = new() { DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull };
        options.Converters.Add(new MoneyConverter());
        options.MakeReadOnly(populateMissingResolver: true);
        return options;
    }
}
