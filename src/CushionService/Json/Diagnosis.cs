using System.Buffers;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Specifications;

namespace CushionService.Json;

/// <summary>Finds every fault in the form of an order's JSON, each with its place, by holding the text against the contract's
/// types.</summary>
/// <remarks>A sound copy of the order is written on the way, without the members at fault: when every fault is one of names or words, the
/// copy is read in its place, so that the rules it breaks can be told at the same time.</remarks>
internal sealed class Diagnosis
{
    // A body of one mebibyte could hold a hundred thousand faults; nobody reads them all.
    private const int MostFaults = 1000;

    private readonly List<Violation> _faults = [];
    private readonly ArrayBufferWriter<byte> _copy = new();
    private bool _readable = true;

    /// <summary>Reads what can be read of an order that the strict reader refused.</summary>
    /// <exception cref="InvalidOperationException">There is no fault, which the strict reader cannot have refused.</exception>
    public static ReceivedOrder OfOrder(ReadOnlyMemory<byte> body, JsonTypeInfo<Order> type)
    {
        (Order? order, IReadOnlyList<Violation> faults) = Of(body, type);
        return faults.Count > 0
            ? new ReceivedOrder(order, faults)
            : throw new InvalidOperationException("The strict reader refused an order in which the diagnosis finds no fault.");
    }

    /// <summary>Reads what can be read of a text, and finds every fault in its form.</summary>
    public static (T? Read, IReadOnlyList<Violation> Faults) Of<T>(ReadOnlyMemory<byte> body, JsonTypeInfo<T> type)
        where T : class
    {
        if (JsonText.FaultOf(body.Span) is { } fault)
        {
            return (null, [fault]);
        }

        using JsonDocument document = JsonDocument.Parse(body, new JsonDocumentOptions { MaxDepth = ContractJson.MaxDepth });
        Diagnosis diagnosis = new();
        using (Utf8JsonWriter writer = new(diagnosis._copy))
        {
            diagnosis.Copy(document.RootElement, type.Type, "", null, writer);
        }

        return (diagnosis._readable ? JsonSerializer.Deserialize(diagnosis._copy.WrittenSpan, type) : null, diagnosis._faults);
    }

    private void Copy(JsonElement element, Type type, string pointer, JsonPropertyInfo? property, Utf8JsonWriter writer)
    {
        if (ContractJson.ElementOf(type) is { } elementType)
        {
            CopyList(element, elementType, pointer, writer);
        }
        else if (ContractJson.CoordinateOf(type) is { } coordinate)
        {
            CopyPair(element, coordinate, pointer, writer);
        }
        else if (ContractJson.Options.GetTypeInfo(type) is { Kind: JsonTypeInfoKind.Object } record)
        {
            CopyRecord(element, record, pointer, writer);
        }
        else if (ValueCheck.FaultOf(element, type, pointer, property) is { } fault)
        {
            Add(fault);
            writer.WriteNullValue();
        }
        else
        {
            element.WriteTo(writer);
        }
    }

    private void CopyList(JsonElement list, Type elementType, string pointer, Utf8JsonWriter writer)
    {
        writer.WriteStartArray();
        if (list.ValueKind == JsonValueKind.Array)
        {
            int index = 0;
            foreach (JsonElement element in list.EnumerateArray())
            {
                string place = $"{pointer}/{index++}";
                // A list of words has no room for a null in the place of a word that is none.
                if (elementType.IsEnum && ValueCheck.FaultOf(element, elementType, place, null) is { } fault)
                {
                    Add(fault);
                }
                else
                {
                    Copy(element, elementType, place, null, writer);
                }
            }
        }
        else
        {
            Add(new Violation(pointer, "wrong-type", $"{Subject(pointer)} must be a list, not {JsonText.KindOf(list)}."));
        }

        writer.WriteEndArray();
    }

    private void CopyPair(JsonElement pair, Type coordinate, string pointer, Utf8JsonWriter writer)
    {
        if (pair.ValueKind == JsonValueKind.Array && pair.GetArrayLength() == 2)
        {
            CopyList(pair, coordinate, pointer, writer);
        }
        else
        {
            Add(new Violation(pointer, "wrong-type", "The value must be a pair of coordinates: a list of two."));
            writer.WriteNullValue();
        }
    }

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
            Add(new Violation(pointer, "wrong-type", $"{Subject(pointer)} must be an object, not {JsonText.KindOf(element)}."));
        }

        writer.WriteEndObject();
    }

    private void CopyMember(JsonProperty member, JsonTypeInfo type, string pointer, HashSet<string> seen, Utf8JsonWriter writer)
    {
        string place = $"{pointer}/{JsonText.Escape(JsonText.NameOf(member))}";
        string name = JsonText.NameOf(member);
        JsonPropertyInfo? property = type.Properties.FirstOrDefault(property => property.Name == name);
        if (property is null)
        {
            string allowed = string.Join(", ", type.Properties.Select(known => known.Name));
            Add(new Violation(place, "unknown-field", $"There is no such field here; the fields are {allowed}."));
        }
        else if (!seen.Add(name))
        {
            Add(new Violation(place, "duplicate-field", "The field is given more than once."));
        }
        else if (member.Value.ValueKind != JsonValueKind.Null)
        {
            writer.WritePropertyName(name);
            Copy(member.Value, property.PropertyType, place, property, writer);
        }
    }

    private void Add(Violation fault)
    {
        bool unreadable = Statuses.IsUnreadable(fault.Code);
        if (_faults.Count < MostFaults)
        {
            _faults.Add(fault);
        }
        else if (unreadable && _readable)
        {
            _faults[^1] = fault;
        }

        _readable &= !unreadable;
    }

    private static string Subject(string pointer) => pointer.Length == 0 ? "The order" : "The value";
}
