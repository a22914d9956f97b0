using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Json;
using Microsoft.Extensions.Primitives;

namespace CushionService.Rest.Estimating;

/// <summary>An order of one cushion and one fabric, read from the parameters of a query.</summary>
internal sealed class FlatOrder
{
    // A query of two bytes a parameter must not be answered with hundreds of bytes for each.
    private const int MostFaults = 20;

    private const string Kind = "/kind";

    private static readonly FrozenDictionary<string, int> IndexOf = FlatField
        .All.Select((field, i) => (field.Name, i))
        .ToFrozenDictionary(field => field.Name, field => field.i);

    // A record's kind takes the record's own name, so a violation of the record as a whole is one of that parameter too.
    private static readonly FrozenDictionary<string, string> Names = FlatField
        .All.SelectMany(field =>
            field.Pointer.EndsWith(Kind, StringComparison.Ordinal)
                ? [(field.Pointer, field.Name), (field.Pointer[..^Kind.Length], field.Name)]
                : new[] { (field.Pointer, field.Name) }
        )
        .ToFrozenDictionary(entry => entry.Item1, entry => "/" + entry.Item2);
    private static readonly int UnitsAt = IndexOf["units"],
        ConstructionAt = IndexOf["construction"],
        ClosureAt = IndexOf["closure"];
    private static readonly int EffortAt = IndexOf["effort"],
        SoldUnitAt = IndexOf["fabricSoldUnit"],
        SoldStepAt = IndexOf["fabricSoldStep"];

    private readonly string?[] _values = new string?[FlatField.All.Length];
    private readonly List<Violation> _faults = [];
    private ReceivedOrder? _reading;

    /// <summary>Reads the parameters.</summary>
    public FlatOrder(IEnumerable<KeyValuePair<string, StringValues>> query)
    {
        foreach ((string name, StringValues given) in query)
        {
            if (!IndexOf.TryGetValue(name, out int index))
            {
                Fault(name, "unknown-field", "There is no parameter of this name; /openapi/v1.json lists the parameters of an estimate.");
            }
            else if (given.Count != 1)
            {
                Fault(name, "duplicate-field", "The parameter is given more than once.");
            }
            else
            {
                _values[index] = given.ToString();
            }
        }

        TakeForGranted();

        void Fault(string name, string code, string detail)
        {
            if (_faults.Count < MostFaults)
            {
                _faults.Add(new Violation("/" + JsonText.Escape(name), code, detail));
            }
        }
    }

    /// <summary>What was said or taken for granted of a field of <see cref="FlatField.All"/>; null for nothing.</summary>
    public string? this[int field] => _values[field];

    /// <summary>Whether every parameter is known and given once.</summary>
    public bool IsRead => _faults.Count == 0;

    /// <summary>The unit of lengths; null when it is not said, or is none.</summary>
    public Units? Units => Words<Units>.Named(_values[UnitsAt] ?? "");

    /// <summary>The unit in which the fabric is sold; null when it is none.</summary>
    public SaleUnit? SaleUnit => Words<SaleUnit>.Named(_values[SoldUnitAt]!);

    /// <summary>The order; its violations name the parameters.</summary>
    public ReceivedOrder Order => _reading ??= Read();

    private ReceivedOrder Read()
    {
        ReceivedOrder reading = OrderText.Parse(JsonSerializer.SerializeToUtf8Bytes(Nested()));
        ReceivedOrder named = reading with { Names = Names };
        return named with { Violations = [.. _faults, .. named.Placed([.. reading.Violations])] };
    }

    // A page asks for fabric; how the cover opens and how the fabric is sold it may leave to custom.
    private void TakeForGranted()
    {
        _values[EffortAt] ??= "quick";
        _values[SoldUnitAt] ??= _values[UnitsAt] is "cm" or "mm" ? "m" : "yd";
        _values[SoldStepAt] ??= _values[SoldUnitAt] == "m" ? "0.1" : "1/8";
        if (_values[ClosureAt] is null && Words<Construction>.Named(_values[ConstructionAt] ?? "") is { } construction)
        {
            ImmutableArray<ClosureOffer> offers = ConstructionRegistry.Of(construction).Offer.Closures;
            bool zips = offers.Any(offer => offer.Kind == ClosureKind.Zipper);
            _values[ClosureAt] = Words<ClosureKind>.Of(zips ? ClosureKind.Zipper : offers[0].Kind);
        }
    }

    private JsonObject Nested()
    {
        JsonObject cushion = new() { ["id"] = "cushion" },
            fabric = new() { ["id"] = "fabric" };
        JsonObject order = new() { ["cushions"] = new JsonArray(cushion), ["fabrics"] = new JsonArray(fabric) };
        for (int i = 0; i < _values.Length; i++)
        {
            if (_values[i] is not { } value)
            {
                continue;
            }

            FlatField field = FlatField.All[i];
            string[] path = field.Pointer.Split('/')[1..];
            JsonObject record = path[0] switch
            {
                "cushions" => cushion,
                "fabrics" => fabric,
                _ => order,
            };
            foreach (string step in path[(record == order ? 0 : 2)..^1])
            {
                record = (record[step] ??= new JsonObject()).AsObject();
            }

            record[path[^1]] = field.IsList
                ? new JsonArray([.. value.Split(',').Select(part => (JsonNode)Node(part, field.Type))])
                : Node(value, field.Type);
        }

        return order;
    }

    // What is not of its type stays text, and is told as such.
    private static JsonValue Node(string value, Type type) =>
        type == typeof(bool) && value is "true" or "false" ? JsonValue.Create(value == "true")
        : type == typeof(int) && Number(value) is { } whole && decimal.IsInteger(whole) && Math.Abs(whole) <= int.MaxValue
            ? JsonValue.Create((int)whole)
        : type == typeof(double) && Number(value) is { } number ? JsonValue.Create(number)
        : JsonValue.Create(value);

    /// <summary>A number of a parameter; null when it is none.</summary>
    internal static decimal? Number(string value) =>
        decimal.TryParse(
            value,
            NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint,
            CultureInfo.InvariantCulture,
            out decimal number
        )
            ? number
            : null;
}
