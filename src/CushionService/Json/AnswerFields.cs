using System.Collections;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using CushionService.Contract;
using CushionService.Engine.Specifications;

namespace CushionService.Json;

/// <summary>Reads which members of an answer a caller asks for, and writes those alone.</summary>
internal static class AnswerFields
{
    // As many as an estimate reports at most: a path of one byte must not be answered with hundreds of bytes each.
    private const int MostViolations = 20;

    /// <summary>Reads the value of the parameter <c>fields</c>: paths separated by commas, each of names separated by
    /// dots.</summary>
    /// <param name="text">The value; an empty one and a star mean all fields.</param>
    /// <param name="answer">The record that answers.</param>
    /// <returns>The fields, null for all; and a violation for each path that the answer does not have, twenty at
    /// most.</returns>
    public static (FieldTree? Fields, IReadOnlyList<Violation> Violations) Read(string text, JsonTypeInfo answer)
    {
        if (text is "" or "*")
        {
            return (null, []);
        }

        FieldTree fields = new();
        List<Violation> violations = [];
        foreach (string path in text.Split(','))
        {
            string[] names = path.Split('.');
            if (Missing(names, answer) is not { } members)
            {
                fields.Add(names);
            }
            else if (violations.Count < MostViolations)
            {
                violations.Add(Unknown(path, members));
            }
        }

        return (fields, violations);
    }

    /// <summary>The violation of a path that an answer does not have.</summary>
    /// <param name="path">The path as it was sent.</param>
    /// <param name="members">The names that the value has at the first name which is wrong.</param>
    public static Violation Unknown(string path, IReadOnlyList<string> members) =>
        new("/fields", "unknown-field", members.Count > 0 ? JsonTexts.NoAnswerField(path, [.. members]) : JsonTexts.NoInnerField(path));

    /// <summary>Writes the fields of an answer that are asked for, in the order of the whole answer.</summary>
    /// <param name="writer">Gets an object.</param>
    /// <param name="answer">The answer.</param>
    /// <param name="fields">What is asked for.</param>
    public static void Write(Utf8JsonWriter writer, object answer, FieldTree fields) =>
        WriteRecord(writer, answer, fields, TypeOf(answer.GetType()));

    // The members that there are where a path goes wrong; null when it does not.
    private static string[]? Missing(string[] names, JsonTypeInfo type)
    {
        foreach (string name in names)
        {
            type = ElementOf(type);
            if (type.Properties.FirstOrDefault(member => member.Name == name) is not { } found)
            {
                return [.. type.Properties.Select(member => member.Name)];
            }

            type = TypeOf(found.PropertyType);
        }

        return null;
    }

    // A path goes through lists: the field of a list is that of each of its entries.
    private static JsonTypeInfo ElementOf(JsonTypeInfo type) =>
        type.Kind == JsonTypeInfoKind.Enumerable ? ElementOf(TypeOf(type.ElementType!)) : type;

    private static JsonTypeInfo TypeOf(Type type) => ContractJson.Options.GetTypeInfo(type);

    private static void WriteValue(Utf8JsonWriter writer, object? value, FieldTree fields, JsonTypeInfo type)
    {
        if (value is null || fields.IsWhole)
        {
            JsonSerializer.Serialize(writer, value, type);
        }
        else if (type.Kind == JsonTypeInfoKind.Enumerable)
        {
            JsonTypeInfo element = TypeOf(type.ElementType!);
            writer.WriteStartArray();
            foreach (object? entry in (IEnumerable)value)
            {
                WriteValue(writer, entry, fields, element);
            }

            writer.WriteEndArray();
        }
        else
        {
            WriteRecord(writer, value, fields, type);
        }
    }

    private static void WriteRecord(Utf8JsonWriter writer, object record, FieldTree fields, JsonTypeInfo type)
    {
        writer.WriteStartObject();
        foreach (JsonPropertyInfo member in type.Properties)
        {
            object? value = fields[member.Name] is null ? null : member.Get!(record);
            if (fields[member.Name] is { } inner && member.ShouldSerialize?.Invoke(record, value) != false)
            {
                writer.WritePropertyName(member.Name);
                WriteValue(writer, value, inner, TypeOf(member.PropertyType));
            }
        }

        writer.WriteEndObject();
    }
}
