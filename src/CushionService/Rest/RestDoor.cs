using CushionService.Json;
using CushionService.Rest.OpenApi;
using CushionService.Rest.Pages;
using Microsoft.AspNetCore.Diagnostics.HealthChecks;

namespace CushionService.Rest;

/// <summary>The door for HTTP and JSON.</summary>
internal static class RestDoor
{
    public static void AddRestDoor(this WebApplicationBuilder builder)
    {
        builder.Services.ConfigureHttpJsonOptions(options => ContractJson.Configure(options.SerializerOptions));
        builder.Services.AddContractDocument();
    }

    public static void MapRestDoor(this WebApplication app)
    {
        RouteGroupBuilder v1 = app.MapGroup("/v1");
        v1.MapValidations();
        v1.MapPieces();
        v1.MapLayouts();
        v1.MapYardage();
        v1.MapQuotes();
        v1.MapComparisons();
        v1.MapFits();
        v1.MapQuoteStream();
        v1.MapEstimate();
        v1.MapCatalogue();
        app.MapHealthChecks("/health/live", new HealthCheckOptions { Predicate = _ => false });
        app.MapHealthChecks("/health/ready");
        app.MapContractDocument();
        app.MapPages();
    }
}
