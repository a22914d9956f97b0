using CushionService.Admission;
using CushionService.Deprecations;
using CushionService.Documents.Projects;
using CushionService.Json;
using CushionService.Rest.OpenApi;
using CushionService.Rest.Pages;
using CushionService.Streaming;

namespace CushionService.Rest;

/// <summary>The door for HTTP: the calls in JSON, the contract and the pages.</summary>
internal static class RestDoor
{
    /// <summary>Adds what the calls and the OpenAPI document need.</summary>
    public static void AddRestDoor(this WebApplicationBuilder builder)
    {
        builder.Services.ConfigureHttpJsonOptions(options => ContractJson.Configure(options.SerializerOptions));
        builder.Services.AddEncodings();
        builder.Services.AddSingleton(ShopDetails.Of(builder.Configuration.GetSection(ShopDetails.Section)));
        builder.Services.AddContractDocument();
    }

    /// <summary>Maps the calls, the document and the pages.</summary>
    public static void MapRestDoor(this WebApplication app)
    {
        // The endpoints are made once: they and what they use keep nothing of a call.
        RouteGroupBuilder v1 = app.MapGroup("/v1");
        OrderDispatcher orders = app.Services.GetRequiredService<OrderDispatcher>();
        QuoteStream stream = app.Services.GetRequiredService<QuoteStream>();
        CatalogueEndpoint catalogue = new(app.Services.GetRequiredService<WorkLimits>());
        IReadOnlyList<Route> routes = RouteTable.Of(orders, stream, catalogue, app.Services.GetRequiredService<ShopDetails>());
        var deprecations = app.Services.GetRequiredService<IReadOnlyDictionary<string, Deprecation>>();
        deprecations.CheckNames(routes.Select(route => route.Text.Operation));
        foreach (Route route in routes)
        {
            v1.Map(route, deprecations.GetValueOrDefault(route.Text.Operation));
        }

        app.MapContractDocument();
        app.MapPages();
        app.MapCodes();
    }
}
