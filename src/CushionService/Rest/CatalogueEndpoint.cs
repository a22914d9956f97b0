using CushionService.Json;
using CushionService.Rejections;
using CushionService.Wording;

namespace CushionService.Rest;

/// <summary>The call for what can be ordered. Its answer is the same for every caller until the next release.</summary>
internal static class CatalogueEndpoint
{
    // The only form of the catalogue.
    private const string MediaType = "application/json";

    /// <summary>Answers a request; with 406 when the caller does not take JSON.</summary>
    public static Task HandleAsync(HttpContext http) =>
        AcceptHeader.Choose(http.Request.Headers.Accept, [MediaType]) < 0
            ? Problems.WriteAsync(http, StatusCodes.Status406NotAcceptable, $"The catalogue comes as {MediaType}.")
            : http.Response.WriteAsJsonAsync(CatalogueWording.Catalogue, ContractJson.Options, MediaType, http.RequestAborted);
}
