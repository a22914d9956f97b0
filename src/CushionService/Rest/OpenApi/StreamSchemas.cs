using CushionService.Contract.Answers;
using CushionService.Rejections;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CushionService.Rest.OpenApi;

/// <summary>Says of a stream what each of its lines is. Version 3.1 has no place for that: the schema is that of one line, and
/// <c>x-item-schema</c> says so, as <c>itemSchema</c> of version 3.2 will.</summary>
internal sealed class StreamSchemas : IOperationFilter
{
    private const string Note = "x-item-schema";

    /// <summary>Changes the schemas of the one operation that is a stream.</summary>
    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        if (operation.OperationId != "quoteMany")
        {
            return;
        }

        foreach (IOpenApiMediaType body in operation.RequestBody?.Content?.Values ?? [])
        {
            ((OpenApiMediaType)body).AddExtension(Note, new JsonNodeExtension(true));
        }

        IOpenApiResponse response = operation.Responses!["200"];
        response.Description = "A line for each order, in their order: its quote, or a problem whose `line` is that of the order.";
        foreach (IOpenApiMediaType body in response.Content?.Values ?? [])
        {
            OpenApiMediaType content = (OpenApiMediaType)body;
            content.Schema = new OpenApiSchema
            {
                OneOf =
                [
                    context.SchemaGenerator.GenerateSchema(typeof(QuoteAnswer), context.SchemaRepository),
                    context.SchemaGenerator.GenerateSchema(typeof(Problem), context.SchemaRepository),
                ],
            };
            content.AddExtension(Note, new JsonNodeExtension(true));
        }
    }
}
