using System.Buffers;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using CushionService.Contract;
using CushionService.Engine.Specifications;

namespace CushionService.Json;

/// <summary>Finds everything that is wrong with the form of an order's JSON, each with its place, by comparing the text
/// with the contract's types. It runs only on a text that the serializer has refused, which stops at the first error
/// and may not say where.</summary>
/// <remarks>On the way a sound copy of the text is written, without the members at fault. When every violation is one
/// of names or words, the copy is read instead of the text, so that the broken rules of the order can be reported at
/// the same time.</remarks>
internal sealed class FormDiagnosis
{
    // Unknown fields whose violations list the known ones. An answer to thousands of fields would be many times as long as they.
    private const int MostLists = 20;

    // The copy is JSON whatever the text was, so that it can be read if it is worth reading.
    private readonly FormViolations _violations = new();
    private readonly ArrayBufferWriter<byte> _copy = new();
    private int _unknown;

    /// <summary>Reads what can be read of a text.</summary>
    /// <param name="body">The text, in UTF-8.</param>
    /// <param name="type">The serializer's metadata of the record.</param>
    /// <returns>The record without the members at fault, or null when it is not readable; and the violations of its
    /// form, none for a text that reads cleanly.</returns>
    /// <typeparam name="T">The record.</typeparam>
    public static (T? Read, IReadOnlyList<Violation> Violations) Of<T>(ReadOnlyMemory<byte> body, JsonTypeInfo<T> type)
        where T : class
    {
        if (JsonText.ViolationOf(body.Span) is { } violation)
        {
            return (null, [violation]);
        }

        using JsonDocument document = JsonDocument.Parse(body, new JsonDocumentOptions { MaxDepth = ContractJson.MaxDepth });
        FormDiagnosis diagnosis = new();
        using (Utf8JsonWriter writer = new(diagnosis._copy))
        {
            diagnosis.Copy(document.RootElement, type.Type, "", null, writer);
        }

        T? read = diagnosis._violations.IsReadable ? JsonSerializer.Deserialize(diagnosis._copy.WrittenSpan, type) : null;
        return (read, diagnosis._violations.All);
    }

    // The types of the contract are lists, pairs of coordinates, records, and simple values.
    private void Copy(JsonElement element, Type type, string pointer, JsonPropertyInfo? property, Utf8JsonWriter writer)
    {
        if (ContractJson.ElementOf(type) is { } elementType)
        {
            CopyList(element, elementType, pointer, property, writer);
        }
        else if (ContractJson.CoordinateOf(type) is { } coordinate && ValueCheck.IsPair(element))
        {
            CopyList(element, coordinate, pointer, null, writer);
        }
        else if (ContractJson.Options.GetTypeInfo(type) is { Kind: JsonTypeInfoKind.Object } record)
        {
            CopyRecord(element, record, pointer, writer);
        }
        else if (ValueCheck.ViolationOf(element, type, pointer, property) is { } violation)
        {
            _violations.Add(violation);
            writer.WriteNullValue();
        }
        else
        {
            element.WriteTo(writer);
        }
    }

    // A value that is not a list becomes an empty one, so that the copy stays JSON. Of a list that is too long one entry too many is
    // enough: the rules find it too long by that.
    private void CopyList(JsonElement list, Type elementType, string pointer, JsonPropertyInfo? property, Utf8JsonWriter writer)
    {
        int reach = LongLists.Reach(RangeOf(property));
        writer.WriteStartArray();
        if (list.ValueKind == JsonValueKind.Array)
        {
            int index = 0;
            foreach (JsonElement element in list.EnumerateArray().Take(reach))
            {
                string place = $"{pointer}/{index++}";
                // A list of words cannot have a null instead of an unknown word: the word is left out.
                if (elementType.IsEnum && ValueCheck.ViolationOf(element, elementType, place, null) is { } violation)
                {
                    _violations.Add(violation);
                }
                else
                {
                    Copy(element, elementType, place, null, writer);
                }
            }
        }
        else
        {
            _violations.Add(ValueCheck.WrongType(list, pointer, JsonForm.List));
        }

        writer.WriteEndArray();
    }

    private static NumberRangeAttribute? RangeOf(JsonPropertyInfo? property) =>
        property?.AttributeProvider?.GetCustomAttributes(typeof(NumberRangeAttribute), false) is [NumberRangeAttribute range]
            ? range
            : null;

    // Names are compared exactly: a name in another case is unknown.
    private void CopyRecord(JsonElement element, JsonTypeInfo type, string pointer, Utf8JsonWriter writer)
    {
        writer.WriteStartObject();
        if (element.ValueKind == JsonValueKind.Object)
        {
            HashSet<string> seen = [];
            foreach (JsonProperty member in element.EnumerateObject())
            {
                CopyMember(member, type, pointer, seen, writer);
            }
        }
        else
        {
            _violations.Add(ValueCheck.WrongType(element, pointer, JsonForm.Object));
        }

        writer.WriteEndObject();
    }

    // A member that is null counts as left out, and is not copied.
    private void CopyMember(JsonProperty member, JsonTypeInfo type, string pointer, HashSet<string> seen, Utf8JsonWriter writer)
    {
        string name = JsonText.NameOf(member);
        string place = $"{pointer}/{JsonText.Escape(name)}";
        JsonPropertyInfo? property = type.Properties.FirstOrDefault(property => property.Name == name);
        if (property is null)
        {
            _violations.Add(
                new Violation(
                    place,
                    "unknown-field",
                    _unknown++ < MostLists
                        ? JsonTexts.UnknownField(type.Properties.Select(property => property.Name))
                        : JsonTexts.UnknownFieldToo
                )
            );
        }
        else if (!seen.Add(name))
        {
            _violations.Add(new Violation(place, "duplicate-field", JsonTexts.FieldTwice));
        }
        else if (member.Value.ValueKind != JsonValueKind.Null)
        {
            writer.WritePropertyName(name);
            Copy(member.Value, property.PropertyType, place, property, writer);
        }
    }
}
