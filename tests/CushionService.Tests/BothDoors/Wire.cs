using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Google.Protobuf;
using Google.Protobuf.Reflection;
using Google.Type;
using Measure = CushionService.Grpc.V1.Measure;
using MotifPosition = CushionService.Grpc.V1.MotifPosition;
using Quantity = CushionService.Grpc.V1.Quantity;

namespace CushionService.Tests.BothDoors;

/// <summary>The test's own translation between the contract's JSON and messages, by descriptors alone; it shares no code with the
/// service's.</summary>
internal static class Wire
{
    /// <summary>The message that says what a JSON object says.</summary>
    public static IMessage Message(JsonObject json, MessageDescriptor descriptor)
    {
        IMessage message = descriptor.Parser.ParseFrom([]);
        foreach ((string name, JsonNode? value) in json)
        {
            FieldDescriptor field = descriptor.Fields.InDeclarationOrder().Single(field => field.JsonName == name);
            if (value is JsonArray list)
            {
                var repeated = (System.Collections.IList)field.Accessor.GetValue(message);
                foreach (JsonNode? element in list)
                {
                    // A pair of coordinates is a list of two in JSON, and a message of its own.
                    JsonNode entry = element is JsonArray pair
                        ? new JsonObject { ["x"] = pair[0]!.DeepClone(), ["y"] = pair[1]!.DeepClone() }
                        : element!;
                    repeated.Add(Value(entry, field));
                }
            }
            else if (value is not null)
            {
                field.Accessor.SetValue(message, Value(value, field));
            }
        }

        return message;
    }

    /// <summary>The JSON that says what a message says, in the form of <see cref="Plain"/>.</summary>
    public static JsonObject Json(IMessage message)
    {
        JsonObject json = [];
        foreach (FieldDescriptor field in message.Descriptor.Fields.InDeclarationOrder())
        {
            object? value = field.Accessor.GetValue(message);
            json[field.JsonName] =
                field.IsRepeated ? List((System.Collections.IList)value!, field)
                : value is null || (field.HasPresence && !field.Accessor.HasValue(message)) ? null
                : Node(value, field);
        }

        return json;
    }

    /// <summary>JSON in one form for both doors: no member is missing that the other writes, no empty list means none, amounts are
    /// numbers.</summary>
    public static JsonNode? Plain(JsonNode? node, string name = "") =>
        node switch
        {
            JsonObject values when name == "arguments" => values.DeepClone(),
            JsonObject record => new JsonObject(
                record.Select(member => KeyValuePair.Create(member.Key, Plain(member.Value, member.Key))).Concat(Missing(record))
            ),
            JsonArray list => new JsonArray([.. list.Select(element => Plain(element))]),
            null => name == "points" ? new JsonArray() : null,
            _ when name is "unitPrice" or "amount" or "total" or "cutFee" or "beforeTax" => decimal.Parse(
                node.GetValue<string>(),
                CultureInfo.InvariantCulture
            ) / 1.000000000m,
            _ => node.DeepClone(),
        };

    // The range of a violation is left out of JSON where none applies.
    private static IEnumerable<KeyValuePair<string, JsonNode?>> Missing(JsonObject record) =>
        record.ContainsKey("pointer") && record.ContainsKey("code")
            ? new[] { "minimum", "maximum" }
                .Where(name => !record.ContainsKey(name))
                .Select(name => KeyValuePair.Create<string, JsonNode?>(name, null))
            : [];

    private static object Value(JsonNode value, FieldDescriptor field) =>
        field.FieldType switch
        {
            FieldType.Message when field.MessageType == Money.Descriptor => Amount(value.GetValue<string>()),
            FieldType.Message when field.MessageType == Measure.Descriptor => value.GetValueKind() == JsonValueKind.Number
                ? new Measure { Number = double.Parse(value.ToJsonString(), CultureInfo.InvariantCulture) }
                : new Measure { Text = value.GetValue<string>() },
            FieldType.Message when field.MessageType == Quantity.Descriptor => value.GetValueKind() == JsonValueKind.Number
                ? new Quantity { Number = double.Parse(value.ToJsonString(), CultureInfo.InvariantCulture) }
                : new Quantity { Text = value.GetValue<string>() },
            FieldType.Message => Message(value.AsObject(), field.MessageType),
            FieldType.Enum => Enum.ToObject(
                field.EnumType.ClrType,
                field.EnumType.Values.Single(known => Word(known) == value.GetValue<string>()).Number
            ),
            FieldType.Double => value.GetValueKind() == JsonValueKind.Number
                ? double.Parse(value.ToJsonString(), CultureInfo.InvariantCulture)
                : throw new ArgumentException(field.Name),
            FieldType.Int32 => value.GetValue<int>(),
            FieldType.Bool => value.GetValue<bool>(),
            _ => value.GetValue<string>(),
        };

    private static Money Amount(string text)
    {
        decimal amount = decimal.Parse(text, CultureInfo.InvariantCulture);
        return new Money { Units = (long)decimal.Truncate(amount), Nanos = (int)(decimal.Remainder(amount, 1) * 1_000_000_000) };
    }

    private static JsonArray List(System.Collections.IList values, FieldDescriptor field) =>
        new([.. values.Cast<object>().Select(value => Node(value, field))]);

    private static JsonNode? Node(object value, FieldDescriptor field) =>
        value switch
        {
            Google.Protobuf.WellKnownTypes.Struct values => JsonNode.Parse(JsonFormatter.Default.Format(values)),
            Money money => money.Units + money.Nanos / 1_000_000_000m,
            IMessage inner => IsPair(inner.Descriptor)
                ? new JsonArray([.. Json(inner).Select(member => member.Value?.DeepClone())])
                : Json(inner),
            Enum choice => Word(field.EnumType.FindValueByNumber(Convert.ToInt32(choice, CultureInfo.InvariantCulture))),
            double number => number,
            int number => number,
            bool truth => truth,
            _ => (string)value,
        };

    /// <summary>Whether a message is a pair of coordinates, of which neither may be left out.</summary>
    public static bool IsPair(MessageDescriptor message) =>
        message.Name != MotifPosition.Descriptor.Name
        && message.Fields.InDeclarationOrder().Select(field => field.Name).SequenceEqual(["x", "y"]);

    /// <summary>The contract's word for a value: <c>CLOSURE_KIND_HAND_SEWN</c> is hand-sewn.</summary>
    public static string Word(EnumValueDescriptor value)
    {
        string prefix = JsonNamingPolicy.SnakeCaseUpper.ConvertName(value.EnumDescriptor.Name) + "_";
        return value.Name[prefix.Length..].ToLowerInvariant().Replace('_', '-');
    }
}
