using System.Text.Json;
using System.Text.Json.Nodes;
using CushionService.Grpc.V1;
using CushionService.Tests.Hosting;
using Google.Protobuf.Reflection;
using Google.Type;
using FieldType = Google.Protobuf.Reflection.FieldType;

namespace CushionService.Tests.BothDoors;

/// <summary>The protos and the OpenAPI document describe the same contract: the same names, types, enumerations and requiredness.</summary>
public sealed class ShapeTests
{
    private static readonly JsonNode Document = JsonNode.Parse(Repository.Read("openapi", "v1.json"))!;
    private readonly HashSet<string> _seen = [];

    public static TheoryData<string, string, string> Calls() =>
        new()
        {
            { "/v1/validations", "post", nameof(ValidateResponse) },
            { "/v1/pieces", "post", nameof(ListPiecesResponse) },
            { "/v1/layouts", "post", nameof(LayOutResponse) },
            { "/v1/yardage", "post", nameof(EstimateYardageResponse) },
            { "/v1/quotes", "post", nameof(QuoteResponse) },
            { "/v1/comparisons", "post", nameof(CompareResponse) },
            { "/v1/fits", "post", nameof(FitResponse) },
            { "/v1/catalogue", "get", nameof(GetCatalogueResponse) },
        };

    [Theory]
    [MemberData(nameof(Calls))]
    public void An_answer_has_the_same_shape(string path, string method, string message)
    {
        JsonNode schema = Document["paths"]![path]![method]!["responses"]!["200"]!["content"]!["application/json"]!["schema"]!;
        Compare(CushionServiceReflection.Descriptor.FindTypeByName<MessageDescriptor>(message)!, schema, ordered: false);
    }

    [Fact]
    public void An_order_has_the_same_shape()
    {
        JsonNode schema = Document["paths"]!["/v1/quotes"]!["post"]!["requestBody"]!["content"]!["application/json"]!["schema"]!;
        Compare(Order.Descriptor, schema, ordered: true);
        Assert.True(_seen.Count > 10, "The comparison did not reach the parts of an order.");
    }

    [Fact]
    public void Every_call_stands_on_both_sides()
    {
        string[] rest =
        [
            .. Document["paths"]!
                .AsObject()
                .SelectMany(path => path.Value!.AsObject())
                .Select(operation => operation.Value!["operationId"]!.GetValue<string>()),
        ];
        string[] grpc =
        [
            .. CushionServiceReflection
                .Descriptor.Services.Single()
                .Methods.Select(call => JsonNamingPolicy.CamelCase.ConvertName(call.Name)),
        ];

        // An estimate is what a page or a cache asks for, labels are paper alone, and a picture is SVG alone; over gRPC there is none.
        Assert.Equal([.. grpc.Concat(["estimate", "printLabels", "drawPicture"]).Order()], rest.Order());
    }

    private void Compare(MessageDescriptor message, JsonNode schema, bool ordered)
    {
        schema = Resolved(schema);
        if (!_seen.Add(message.Name))
        {
            return;
        }

        JsonObject members = schema["properties"]!.AsObject();
        Assert.Equal(
            message.Fields.InDeclarationOrder().Select(field => field.JsonName).Order(),
            members.Select(member => member.Key).Order()
        );
        string[] required = [.. schema["required"]?.AsArray().Select(name => name!.GetValue<string>()) ?? []];
        foreach (FieldDescriptor field in message.Fields.InDeclarationOrder())
        {
            JsonNode member = members[field.JsonName]!;
            Assert.True(
                TypeOf(field) == TypeOf(member),
                $"{message.Name}.{field.Name} is {TypeOf(field)}, {field.JsonName} is {TypeOf(member)}"
            );
            Assert.Equal(field.IsRepeated, Is(member, "array"));
            bool mustBeThere = required.Contains(field.JsonName);
            if (ordered)
            {
                Assert.True(field.IsRepeated || field.HasPresence, $"{message.Name}.{field.Name} cannot be left out");
                Assert.True(
                    mustBeThere == Comment(message, field).Contains(". Required.", StringComparison.Ordinal),
                    $"{message.Name}.{field.Name}: required"
                );
            }
            else if (!field.IsRepeated && field.FieldType != FieldType.Message)
            {
                Assert.True(field.HasPresence == (IsNullable(member) || !mustBeThere), $"{message.Name}.{field.Name}: presence");
            }

            JsonNode inner = Is(member, "array") ? member["items"]! : member;
            if (field.FieldType == FieldType.Enum)
            {
                Assert.Equal(
                    Resolved(inner)["enum"]!.AsArray().Select(word => word!.GetValue<string>()),
                    field.EnumType.Values.Where(value => value.Number > 0).Select(Wire.Word)
                );
            }
            else if (field.FieldType == FieldType.Message && !IsValue(field.MessageType))
            {
                Compare(field.MessageType, inner, ordered);
            }
        }
    }

    // A proto says in words what must be there; the comment is above the field.
    private static string Comment(MessageDescriptor message, FieldDescriptor field)
    {
        string[] lines = Repository.Read(["protos", .. message.File.Name.Split('/')]).Split('\n');
        int start = Array.FindIndex(lines, line => line == $"message {message.Name} {{");
        int at = Array.FindIndex(lines, start, line => line.EndsWith($" {field.Name} = {field.FieldNumber};", StringComparison.Ordinal));
        return string.Join(
                ' ',
                lines
                    .Take(at)
                    .Reverse()
                    .TakeWhile(line => line.TrimStart().StartsWith("//", StringComparison.Ordinal))
                    .Reverse()
                    .Select(line => line.Trim(' ', '/'))
            ) + " ";
    }

    private static string TypeOf(FieldDescriptor field) =>
        field.FieldType switch
        {
            FieldType.Message when field.MessageType == Money.Descriptor => "string",
            FieldType.Message when field.MessageType == Measure.Descriptor => "Measure",
            FieldType.Message when field.MessageType == Quantity.Descriptor => "Quantity",
            FieldType.Message when Wire.IsPair(field.MessageType) => "pair",
            FieldType.Message => "object",
            FieldType.Enum or FieldType.String => "string",
            FieldType.Double => "number",
            FieldType.Int32 => "integer",
            FieldType.Bool => "boolean",
            _ => throw new ArgumentOutOfRangeException(field.Name),
        };

    private static string TypeOf(JsonNode schema)
    {
        JsonNode inner = Is(schema, "array") ? schema["items"]! : schema;
        JsonNode resolved = Resolved(inner);
        return JsonNode.DeepEquals(resolved, Document["components"]!["schemas"]!["Measure"]) ? "Measure"
            : JsonNode.DeepEquals(resolved, Document["components"]!["schemas"]!["Quantity"]) ? "Quantity"
            : Is(resolved, "array") && resolved["minItems"]?.GetValue<int>() == 2 && resolved["maxItems"]?.GetValue<int>() == 2 ? "pair"
            : new[] { "object", "string", "number", "integer", "boolean" }.Single(type => Is(resolved, type));
    }

    private static bool IsValue(MessageDescriptor message) =>
        message == Money.Descriptor
        || message == Measure.Descriptor
        || message == Quantity.Descriptor
        || message == Google.Protobuf.WellKnownTypes.Struct.Descriptor
        || Wire.IsPair(message);

    private static bool Is(JsonNode schema, string type) =>
        schema["type"] switch
        {
            JsonArray types => types.Any(one => one!.GetValue<string>() == type),
            JsonValue one => one.GetValue<string>() == type,
            _ => false,
        };

    private static bool IsNullable(JsonNode schema) =>
        Is(schema, "null") || (schema["oneOf"] is JsonArray either && either.Any(one => Is(one!, "null")));

    private static JsonNode Resolved(JsonNode schema)
    {
        JsonNode target =
            schema["oneOf"] is JsonArray either && either.FirstOrDefault(one => one!["$ref"] is not null) is { } reference
                ? reference
                : schema;
        return target["$ref"]?.GetValue<string>() is { } path ? Document["components"]!["schemas"]![path.Split('/')[^1]]! : target;
    }
}
