using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CushionService.Rest.OpenApi;

internal sealed class ContractSchemas : ISchemaFilter
{
    public void Apply(IOpenApiSchema schema, SchemaFilterContext context)
    {
    }
}
