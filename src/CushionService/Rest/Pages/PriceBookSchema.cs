using System.ComponentModel.DataAnnotations;
using System.Reflection;
using System.Text.Json.Nodes;
using System.Text.Json.Schema;
using System.Text.Json.Serialization.Metadata;
using CushionService.Contract;
using CushionService.Json;
using CushionService.PriceBooks;
using CushionService.Wording;

namespace CushionService.Rest.Pages;

/// <summary>The JSON Schema (2020-12) of a price book, with which editors complete and check one while it is written. Made
/// from the same records and attributes that read it.</summary>
internal static class PriceBookSchema
{
    /// <summary>Where it is served.</summary>
    public const string Path = "/schemas/price-book.json";

    /// <summary>The media type of a schema.</summary>
    public const string MediaType = "application/schema+json";

    /// <summary>The schema.</summary>
    public static JsonObject Make()
    {
        ContractComments comments = new();
        JsonNode schema = ContractJson.Options.GetJsonSchemaAsNode(
            typeof(PriceBookFile),
            new JsonSchemaExporterOptions
            {
                TreatNullObliviousAsNonNullable = true,
                TransformSchemaNode = (at, node) => Completed(at, node, comments),
            }
        );
        JsonObject book = new()
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = "A price book of CushionService",
        };
        foreach ((string name, JsonNode? value) in schema.AsObject())
        {
            book[name] = value?.DeepClone();
        }

        return book;
    }

    private static JsonObject Completed(JsonSchemaExporterContext at, JsonNode node, ContractComments comments)
    {
        Type type = Nullable.GetUnderlyingType(at.TypeInfo.Type) ?? at.TypeInfo.Type;
        // The converters of the contract tell the exporter nothing of what they read.
        JsonObject schema =
            node is JsonObject known ? known
            : type.IsEnum ? new JsonObject { ["enum"] = new JsonArray([.. WordsOf(type).Select(word => (JsonNode)word)]) }
            : type == typeof(Measure) ? new JsonObject { ["type"] = new JsonArray("number", "string") }
            : type == typeof(double) ? new JsonObject { ["type"] = "number" }
            : [];
        if (at.TypeInfo.Kind == JsonTypeInfoKind.Object && schema["properties"] is not null)
        {
            string[] required =
            [
                .. at.TypeInfo.Properties.Where(member => Of<RequiredAttribute>(member) is not null).Select(member => member.Name),
            ];
            if (required.Length > 0)
            {
                schema["required"] = new JsonArray([.. required.Select(name => (JsonNode)name)]);
            }
        }

        if (at.PropertyInfo is { AttributeProvider: PropertyInfo property } field)
        {
            schema["description"] = comments.Of(property);
            Limit(schema, field);
        }

        return schema;
    }

    // .NET and JSON Schema (ECMA-262) write the ends of a text differently.
    private static void Limit(JsonObject schema, JsonPropertyInfo field)
    {
        if (Of<RegularExpressionAttribute>(field) is { } form)
        {
            schema["pattern"] = form.Pattern.Replace("\\A", "^", StringComparison.Ordinal).Replace("\\z", "$", StringComparison.Ordinal);
        }

        if (Of<MaxLengthAttribute>(field) is { } most)
        {
            schema["maxLength"] = most.Length;
        }

        if (Of<NumberRangeAttribute>(field) is { } range)
        {
            bool list = ContractJson.ElementOf(field.PropertyType) is not null;
            schema[list ? "minItems" : "minimum"] = range.Minimum;
            schema[list ? "maxItems" : "maximum"] = range.Maximum;
        }
    }

    private static T? Of<T>(JsonPropertyInfo member)
        where T : Attribute => (member.AttributeProvider as PropertyInfo)?.GetCustomAttribute<T>();

    private static IEnumerable<string> WordsOf(Type enumeration) =>
        (IEnumerable<string>)typeof(Words<>).MakeGenericType(enumeration).GetProperty(nameof(Words<Units>.All))!.GetValue(null)!;
}
