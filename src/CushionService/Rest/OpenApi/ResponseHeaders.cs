using CushionService.Deprecations;
using Microsoft.Net.Http.Headers;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CushionService.Rest.OpenApi;

/// <summary>Declares the headers of answers, and the one with which a caller asks only for what it does not hold. Marks the calls that
/// are deprecated.</summary>
internal sealed class ResponseHeaders : IOperationFilter
{
    private static readonly OpenApiHeader Trace = Of("Names the call in the service's logs (W3C Trace Context).");
    private static readonly OpenApiHeader Policy = Of("The caller's limits: calls a second, and at once. Not on answers that caches keep.");
    private static readonly OpenApiHeader Left = Of("What is left of the limits, and in how many seconds they are whole again.");
    private static readonly OpenApiHeader Tag = Of("The entity tag of the answer.");
    private static readonly OpenApiHeader Caching = Of("Who may keep the answer, and for how long.");
    private static readonly OpenApiHeader Challenge = Of(
        "How to authenticate, and what was wrong with the key or token that came (RFC 6750)."
    );
    private static readonly OpenApiHeader Deprecated = Of("Since when the call is deprecated (RFC 9745). Only on calls that are.");
    private static readonly OpenApiHeader Sunset = Of("When the call ends (RFC 8594). Only on calls that are deprecated.");

    /// <summary>Adds the headers that each response has.</summary>
    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        operation.Deprecated = context.ApiDescription.ActionDescriptor.EndpointMetadata.OfType<Deprecation>().Any();
        bool isCached = operation.Responses?.ContainsKey("304") == true;
        foreach ((string status, IOpenApiResponse response) in operation.Responses ?? [])
        {
            IDictionary<string, IOpenApiHeader> headers = ((OpenApiResponse)response).Headers ??= new Dictionary<string, IOpenApiHeader>();
            headers["traceresponse"] = Trace;
            headers["RateLimit-Policy"] = Policy;
            headers["RateLimit"] = Left;
            headers[HeaderNames.CacheControl] = Caching;

            if (status == "200")
            {
                headers["Deprecation"] = Deprecated;
                headers["Sunset"] = Sunset;
            }

            if (isCached && status is ("200" or "304"))
            {
                headers[HeaderNames.ETag] = Tag;
            }

            if (status is "401" or "403")
            {
                headers[HeaderNames.WWWAuthenticate] = Challenge;
            }
        }

        if (isCached)
        {
            operation.Parameters!.Add(
                new OpenApiParameter
                {
                    Name = HeaderNames.IfNoneMatch,
                    In = ParameterLocation.Header,
                    Description = "The entity tags of answers that the caller holds; 304 where one of them is still right.",
                    Schema = new OpenApiSchema { Type = JsonSchemaType.String },
                }
            );
        }
    }

    private static OpenApiHeader Of(string description) =>
        new()
        {
            Description = description,
            Schema = new OpenApiSchema { Type = JsonSchemaType.String },
        };
}
