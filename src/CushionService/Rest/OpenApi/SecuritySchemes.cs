using CushionService.Access;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CushionService.Rest.OpenApi;

/// <summary>Says in the document how a caller authenticates, and which scope each call needs.</summary>
internal sealed class SecuritySchemes : IDocumentFilter, IOperationFilter
{
    // The names of the schemes in the document.
    private const string Key = "key";
    private const string Token = "token";

    /// <summary>Adds the two schemes: an API key, and a token.</summary>
    public void Apply(OpenApiDocument swaggerDoc, DocumentFilterContext context)
    {
        swaggerDoc.AddComponent(
            Key,
            (IOpenApiSecurityScheme)
                new OpenApiSecurityScheme
                {
                    Type = SecuritySchemeType.ApiKey,
                    In = ParameterLocation.Header,
                    Name = KeyHandler.Header,
                    Description =
                        "A key that the operator of the service gave out, with its scopes: estimate, quote, batch, prices:inline.",
                }
        );
        swaggerDoc.AddComponent(
            Token,
            (IOpenApiSecurityScheme)
                new OpenApiSecurityScheme
                {
                    Type = SecuritySchemeType.Http,
                    Scheme = "bearer",
                    BearerFormat = "JWT",
                    Description =
                        "A token of the operator's authority, with the same scopes in its scope claim. Algorithm, issuer, audience "
                        + "and lifetime are checked (RFC8725).",
                }
        );
    }

    /// <summary>Adds the scope of a call. Calls without a scope are open to everyone.</summary>
    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        if (context.ApiDescription.ActionDescriptor.EndpointMetadata.OfType<RequiresScopeAttribute>().LastOrDefault() is { } needs)
        {
            // An operator may open a call to everyone; hence the empty requirement beside the two.
            List<string> scopes = [.. ScopeNames.Of(needs.Scope).Split(' ')];
            operation.Security =
            [
                [],
                new() { [new OpenApiSecuritySchemeReference(Key, context.Document)] = scopes },
                new() { [new OpenApiSecuritySchemeReference(Token, context.Document)] = scopes },
            ];
        }
    }
}
