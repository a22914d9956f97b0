using CushionService.Access;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CushionService.Rest.OpenApi;

/// <summary>Says in the document how a caller makes itself known, and which scope each call needs.</summary>
internal sealed class SecuritySchemes : IDocumentFilter, IOperationFilter
{
    private const string Key = "key";
    private const string Token = "token";

    public void Apply(OpenApiDocument swaggerDoc, DocumentFilterContext context)
    {
        swaggerDoc.AddComponent(
            Key,
            (IOpenApiSecurityScheme)
                new OpenApiSecurityScheme
                {
                    Type = SecuritySchemeType.ApiKey,
                    In = ParameterLocation.Header,
                    Name = AccessControl.KeyHeader,
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
                    Description = "A token of the operator's authority, with the same scopes in its scope claim.",
                }
        );
    }

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
