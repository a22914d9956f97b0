using System.Reflection;
using System.Text.Json.Serialization.Metadata;
using System.Text.RegularExpressions;
using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Json;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CushionService.Rest.OpenApi;

/// <summary>Adds to the document what the contract's attributes and conventions say beyond the types: ranges, defaults,
/// lengths, nulls.</summary>
internal sealed partial class ContractSchemas : ISchemaFilter
{
    /// <summary>Completes the schema of a type. Members are completed with their record, and not by
    /// themselves.</summary>
    public void Apply(IOpenApiSchema schema, SchemaFilterContext context)
    {
        if (schema is not OpenApiSchema concrete || context.MemberInfo is not null)
        {
            return;
        }

        concrete.Description = OneLine(concrete.Description);
        if (context.Type == typeof(Measure))
        {
            ValueSchemas.DescribeMeasure(concrete);
        }
        else if (context.Type == typeof(Quantity))
        {
            ValueSchemas.DescribeQuantity(concrete);
        }
        else if (context.Type == typeof(Corner))
        {
            ValueSchemas.DescribePair(concrete, context.SchemaGenerator.GenerateSchema(typeof(Measure), context.SchemaRepository));
        }
        else if (context.Type == typeof(PointAnswer))
        {
            ValueSchemas.DescribePair(concrete, new OpenApiSchema { Type = JsonSchemaType.Number, Format = "double" });
        }
        else if (context.Type.IsEnum)
        {
            concrete.Description += EnumerationComments.Of(context.Type);
        }
        else if (concrete.Properties is { Count: > 0 } members)
        {
            DescribeRecord(concrete, members, context.Type);
        }
    }

    // Records of an order are closed: a member that they do not have is refused. Records of an answer may get more
    // members, and have all of those that they have now.
    private static void DescribeRecord(OpenApiSchema schema, IDictionary<string, IOpenApiSchema> members, Type record)
    {
        bool ordered = record.Namespace == typeof(Order).Namespace;
        schema.AdditionalPropertiesAllowed = !ordered;
        foreach (JsonPropertyInfo member in ContractJson.Options.GetTypeInfo(record).Properties)
        {
            PropertyInfo property = (PropertyInfo)member.AttributeProvider!;
            IOpenApiSchema described = members[member.Name];
            described.Description = OneLine(described.Description);
            if (ordered)
            {
                DescribeRequested(described, property);
            }
            else if (member.ShouldSerialize is null)
            {
                members[member.Name] = Answered(described, property);
                (schema.Required ??= new HashSet<string>()).Add(member.Name);
            }
            else
            {
                NeverNull(described);
            }
        }
    }

    // A request may leave a member out or send null, which means the same, so the schema need not allow null. Ranges
    // become bounds.
    private static void DescribeRequested(IOpenApiSchema member, PropertyInfo property)
    {
        if (property.GetCustomAttribute<LengthRangeAttribute>() is { } lengths)
        {
            member.Description += $" From {lengths.Minimum} to {lengths.Maximum}." + DefaultOf(member, lengths.Default);
        }

        if (member is not OpenApiSchema schema)
        {
            return;
        }

        NeverNull(schema);
        Bound(schema, property);
        if (property.GetCustomAttribute<NumberRangeAttribute>() is { } range)
        {
            schema.Description += DefaultOf(member, range.Default);
        }
    }

    /// <summary>Gives the schema of a member of an order its bounds: a range, and the length of its text.</summary>
    /// <param name="schema">The schema of the member.</param>
    /// <param name="property">The member; of a list, its range counts the entries.</param>
    public static void Bound(OpenApiSchema schema, PropertyInfo property)
    {
        BoundText(schema);
        BoundText(schema.Items as OpenApiSchema);
        if (property.GetCustomAttribute<NumberRangeAttribute>() is { } range)
        {
            if (schema.Type == JsonSchemaType.Array)
            {
                (schema.MinItems, schema.MaxItems) = ((int)range.Minimum, (int)range.Maximum);
                if (property.GetCustomAttribute<EntryRangeAttribute>() is { } entries && schema.Items is OpenApiSchema items)
                {
                    (items.Minimum, items.Maximum) = ($"{entries.Minimum}", $"{entries.Maximum}");
                }
            }
            else
            {
                (schema.Minimum, schema.Maximum) = ($"{range.Minimum}", $"{range.Maximum}");
            }
        }
    }

    // Text without a length of its own has a pattern, or is the name of something in the order.
    private static void BoundText(OpenApiSchema? schema)
    {
        if (schema is { Enum: null or [], MaxLength: null } && schema.Type?.HasFlag(JsonSchemaType.String) == true)
        {
            schema.MaxLength = schema.Pattern switch
            {
                CurrencyCode.Pattern => 3,
                HexColour.Pattern => 7,
                DueDay.Pattern => 10,
                Amount.Pattern => 16,
                _ => 64,
            };
        }
    }

    // Unless the description says it in its own words.
    private static string DefaultOf(IOpenApiSchema member, string? value) =>
        value is null || member.Description!.Contains("when left out", StringComparison.Ordinal) ? "" : $" When left out: {value}.";

    // A reference cannot have null beside it: one of the two.
    private static IOpenApiSchema Answered(IOpenApiSchema member, PropertyInfo property)
    {
        bool nullable = new NullabilityInfoContext().Create(property).ReadState == NullabilityState.Nullable;
        return nullable && member is OpenApiSchemaReference reference
            ? new OpenApiSchema { Description = member.Description, OneOf = [reference, new OpenApiSchema { Type = JsonSchemaType.Null }] }
            : member;
    }

    // Null is a type of its own in version 3.1.
    private static void NeverNull(IOpenApiSchema member)
    {
        if (member is OpenApiSchema schema)
        {
            schema.Type &= ~JsonSchemaType.Null;
        }
    }

    // XML documentation has the line breaks and indents of its source.
    private static string? OneLine(string? text) => text is null ? null : Blanks().Replace(text, " ");

    // Spaces, tabs and line breaks, one or more.
    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();
}
