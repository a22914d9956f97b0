using Microsoft.OpenApi;

namespace CushionService.Rest.OpenApi;

/// <summary>The schemas of the contract's own values, which are records in code and something else in JSON.</summary>
internal static class ValueSchemas
{
    /// <summary>A length: a number or text, neither of them preferred.</summary>
    /// <param name="schema">The schema to complete; what the generator found of the record is dropped.</param>
    public static void DescribeMeasure(OpenApiSchema schema)
    {
        Clear(schema);
        schema.Type = null;
        schema.OneOf =
        [
            new OpenApiSchema { Type = JsonSchemaType.Number, Description = "In the order's units." },
            new OpenApiSchema
            {
                Type = JsonSchemaType.String,
                MaxLength = 40,
                Description = "May hold a fraction and a unit of its own: in, cm, mm, yd or m.",
            },
        ];
        schema.Examples = [15.5, "15 1/2", "38.5 cm", "1 1/4 yd"];
    }

    /// <summary>A quantity in a unit of sale: a number, or text with a fraction.</summary>
    /// <param name="schema">The schema to complete.</param>
    public static void DescribeQuantity(OpenApiSchema schema)
    {
        Clear(schema);
        schema.Type = null;
        schema.OneOf =
        [
            new OpenApiSchema { Type = JsonSchemaType.Number, Description = "In the unit of sale." },
            new OpenApiSchema
            {
                Type = JsonSchemaType.String,
                MaxLength = 40,
                Description = "May hold a fraction, and is exact.",
            },
        ];
        schema.Examples = [0.25, "1/3", "1 1/2"];
    }

    /// <summary>A pair of coordinates: a list of two.</summary>
    /// <param name="schema">The schema to complete.</param>
    /// <param name="coordinate">The schema of a coordinate: a length in an order, a number in an answer.</param>
    public static void DescribePair(OpenApiSchema schema, IOpenApiSchema coordinate)
    {
        Clear(schema);
        schema.Type = JsonSchemaType.Array;
        schema.Items = coordinate;
        (schema.MinItems, schema.MaxItems) = (2, 2);
    }

    private static void Clear(OpenApiSchema schema)
    {
        schema.Properties = null;
        schema.Required = null;
        schema.AdditionalPropertiesAllowed = true;
    }
}
