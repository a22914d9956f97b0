using System.ComponentModel.DataAnnotations;
using System.Reflection;
using System.Text.Json.Nodes;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Rest.Estimating;
using CushionService.Wording;
using Microsoft.Extensions.Primitives;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;
using Outline = CushionService.Contract.Orders.Outline;

namespace CushionService.Rest.OpenApi;

/// <summary>Adds the parameters of an estimate to the document, from the members of the order that they fill. The
/// endpoint reads the query by itself, so the generator cannot see them.</summary>
internal sealed class EstimateParameters : IOperationFilter
{
    // Examples for the parameters that every estimate needs: a bench of 44 in by 18 in, 3 in thick, from fabric 54 in
    // wide.
    private static readonly Dictionary<string, string> Shown = new()
    {
        ["units"] = "in",
        ["construction"] = "boxed",
        ["outline"] = "rectangle",
        ["width"] = "44",
        ["depth"] = "18",
        ["thickness"] = "3",
        ["fabricWidth"] = "54",
    };

    /// <summary>The order of the examples.</summary>
    public static ReceivedOrder ShownOrder =>
        new FlatOrder(Shown.Select(entry => new KeyValuePair<string, StringValues>(entry.Key, entry.Value))).Order;

    private readonly ContractComments _comments = new();

    /// <summary>Adds the parameters to the one operation that has them.</summary>
    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        if (operation.OperationId == "estimate")
        {
            operation.Parameters = [.. FlatField.All.Select(field => Parameter(field, context))];
        }
    }

    // Lists are written with commas, which the document calls not exploded.
    private OpenApiParameter Parameter(FlatField field, OperationFilterContext context)
    {
        var lengths = field.Property.GetCustomAttribute<LengthRangeAttribute>();
        IOpenApiSchema value = context.SchemaGenerator.GenerateSchema(
            field.Type,
            context.SchemaRepository,
            field.IsList ? null : field.Property
        );
        IOpenApiSchema schema =
            field.Type == typeof(OutlineKind) ? Words(FlatField.Outlines)
            : field.IsList ? new OpenApiSchema { Type = JsonSchemaType.Array, Items = value }
            : value;
        if (schema is OpenApiSchema bounded)
        {
            bounded.Description = null;
            ContractSchemas.Bound(bounded, field.Property);
        }

        return new OpenApiParameter
        {
            Name = field.Name,
            In = ParameterLocation.Query,
            Description = _comments.Of(field.Property) + (lengths is null ? "" : $" From {lengths.Minimum} to {lengths.Maximum}."),
            Required = IsRequired(field),
            Explode = false,
            Schema = schema,
            Example = Shown.GetValueOrDefault(field.Name) is { } example ? JsonValue.Create(example) : null,
        };
    }

    private static OpenApiSchema Words(IEnumerable<string> words) =>
        new() { Type = JsonSchemaType.String, Enum = [.. words.Select(word => (JsonNode)word)] };

    // The closure and the sale have defaults in this call. What a record inside requires, it requires only when it is
    // given.
    private static bool IsRequired(FlatField field) =>
        field.Property.IsDefined(typeof(RequiredAttribute))
        && (
            field.Property.DeclaringType == typeof(Order)
            || field.Property.DeclaringType == typeof(CushionMake)
            || field.Property.DeclaringType == typeof(Cushion)
            || field.Property.DeclaringType == typeof(Outline)
            || field.Property.DeclaringType == typeof(Fabric)
        );
}
