using System.ComponentModel.DataAnnotations;
using System.Reflection;
using System.Text.Json.Nodes;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Rest.Estimating;
using CushionService.Wording;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CushionService.Rest.OpenApi;

/// <summary>Tells the document the parameters of an estimate, from the members of the order that they fill.</summary>
internal sealed class EstimateParameters : IOperationFilter
{
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

    private readonly ContractComments _comments = new();

    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        if (operation.OperationId == "estimate")
        {
            operation.Parameters = [.. FlatField.All.Select(field => Parameter(field, context))];
        }
    }

    private OpenApiParameter Parameter(FlatField field, OperationFilterContext context)
    {
        var lengths = field.Property.GetCustomAttribute<LengthRangeAttribute>();
        IOpenApiSchema value = context.SchemaGenerator.GenerateSchema(field.Type, context.SchemaRepository);
        return new OpenApiParameter
        {
            Name = field.Name,
            In = ParameterLocation.Query,
            Description = _comments.Of(field.Property) + (lengths is null ? "" : $" From {lengths.Minimum} to {lengths.Maximum}."),
            Required = IsRequired(field),
            Explode = false,
            Schema = field.IsList ? new OpenApiSchema { Type = JsonSchemaType.Array, Items = value } : value,
            Example = Shown.GetValueOrDefault(field.Name) is { } example ? JsonValue.Create(example) : null,
        };
    }

    // The closure and the sale have customs to fall back on; an inner record's own need holds only when the record is there.
    private static bool IsRequired(FlatField field) =>
        field.Property.IsDefined(typeof(RequiredAttribute))
        && (
            field.Property.DeclaringType == typeof(Order)
            || field.Property.DeclaringType == typeof(Cushion)
            || field.Property.DeclaringType == typeof(Outline)
            || field.Property.DeclaringType == typeof(Fabric)
        );
}
