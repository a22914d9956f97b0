using System.Collections.Frozen;
using System.Collections.Immutable;
using System.ComponentModel.DataAnnotations;
using System.Globalization;
using System.Text.Json;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Json;
using Microsoft.Extensions.Primitives;

namespace CushionService.Rest.Estimating;

/// <summary>An order of one cushion and one fabric, read from the parameters of a query.</summary>
internal sealed class FlatOrder
{
    // A query of two bytes a parameter must not be answered with hundreds of bytes for each.
    private const int MostViolations = 20;

    private const string Kind = "/kind",
        Outline = "outline";

    private static readonly FrozenSet<string> Known = FlatField.All.Select(field => field.Name).ToFrozenSet();

    // The parameter that fills each place of the order. A violation of a record as a whole is one of the parameter that gives it its kind,
    // or else of the one that it needs most.
    private static readonly FrozenDictionary<string, FlatField> Fields = FieldsByPlace();

    // What a caller calls the fields of the order.
    private static readonly FrozenDictionary<string, string> Names = Fields.ToFrozenDictionary(
        entry => entry.Key,
        entry => "/" + entry.Value.Name
    );

    private readonly Dictionary<string, string> _values = [];
    private readonly List<Violation> _violations = [];
    private ReceivedOrder? _order;

    /// <summary>Reads the parameters. Whatever they are, nothing is thrown.</summary>
    /// <param name="query">Each parameter with the values that it was given.</param>
    /// <param name="language">The language in which sentences call the fabric.</param>
    public FlatOrder(IEnumerable<KeyValuePair<string, StringValues>> query, Language language = Language.English)
    {
        FabricLabel = new MessageWriter(language, LengthUnit.Millimetre).Text(EstimateTexts.Fabric);
        foreach ((string name, StringValues given) in query)
        {
            if (!Known.Contains(name))
            {
                Report(name, "unknown-field", EstimateTexts.UnknownParameter);
            }
            else if (given.Count != 1)
            {
                Report(name, "duplicate-field", EstimateTexts.ParameterTwice);
            }
            else if (name == Outline && !FlatField.Outlines.Contains(given.ToString()))
            {
                string outline = given.ToString();
                Report(
                    name,
                    "unknown-value",
                    Words<OutlineKind>.Named(outline) is null
                        ? JsonTexts.Choices(FlatField.Outlines)
                        : EstimateTexts.OutlineByOrder(outline, FlatField.Outlines)
                );
            }
            else
            {
                _values[name] = given.ToString();
            }
        }

        TakeDefaults();
    }

    /// <summary>The value of a parameter, or its default; null when it was left out and has none.</summary>
    /// <param name="name">One of the names of <see cref="FlatField.All"/>.</param>
    public string? this[string name] => _values.GetValueOrDefault(name);

    /// <summary>Whether every parameter is known and given once, and the outline is one that is ordered here.</summary>
    public bool IsRead => _violations.Count == 0;

    /// <summary>What sentences call the fabric, which a query gives no name.</summary>
    public string FabricLabel { get; }

    /// <summary>The unit of lengths; null when it is missing or unknown.</summary>
    public Units? Units => Words<Units>.Named(this["units"] ?? "");

    /// <summary>The unit in which the fabric is sold; null when it is unknown.</summary>
    public SaleUnit? SaleUnit => Words<SaleUnit>.Named(_values["fabricSoldUnit"]);

    /// <summary>The order. Its violations name the parameters.</summary>
    public ReceivedOrder Order => _order ??= Read();

    /// <summary>The number of a parameter; null when it is not a number.</summary>
    /// <param name="value">As a query has it: a sign and a point are allowed, exponents and thousands are not.</param>
    internal static decimal? Number(string value) =>
        decimal.TryParse(
            value,
            NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint,
            CultureInfo.InvariantCulture,
            out decimal number
        )
            ? number
            : null;

    // Read as JSON, so that types, words and lengths are checked by the same code as in every other call.
    private ReceivedOrder Read()
    {
        ReceivedOrder read = OrderText.Parse(JsonSerializer.SerializeToUtf8Bytes(FlatOrderJson.Of(this))) with
        {
            Names = Names,
            Wording = Worded,
        };
        return read with { Violations = [.. _violations, .. read.Placed([.. read.Violations.Take(MostViolations - _violations.Count)])] };
    }

    // A page asks for fabric: how the cover closes and how the fabric is sold, it may leave to common practice.
    private void TakeDefaults()
    {
        bool metric = this["units"] is "cm" or "mm";
        _values.TryAdd("effort", "quick");
        _values.TryAdd("fabricSoldUnit", metric ? "m" : "yd");
        _values.TryAdd(
            "fabricSoldStep",
            this["fabricSoldUnit"] switch
            {
                "m" => "0.1",
                "kg" or "lb" => "0.01",
                _ => "1/8",
            }
        );
        // Of a construction that is not known, nobody can say that it takes another closure.
        ImmutableArray<ClosureOffer> offers = Words<Construction>.Named(this["construction"] ?? "") is { } construction
            ? ConstructionRegistry.Of(construction).Offer.Closures
            : [];
        bool zips = offers.IsEmpty || offers.Any(offer => offer.Kind == ClosureKind.Zipper);
        _values.TryAdd("closure", Words<ClosureKind>.Of(zips ? ClosureKind.Zipper : offers[0].Kind));
    }

    private static FrozenDictionary<string, FlatField> FieldsByPlace()
    {
        Dictionary<string, FlatField> fields = FlatField.All.ToDictionary(field => field.Pointer);
        foreach (IGrouping<string, FlatField> record in FlatField.All.GroupBy(field => field.Pointer[..field.Pointer.LastIndexOf('/')]))
        {
            FlatField? kind = record.FirstOrDefault(field => field.Pointer.EndsWith(Kind, StringComparison.Ordinal));
            // The cushion, the fabric and the workroom themselves are no parameter.
            if (kind is not null || record.Key.Count(letter => letter == '/') > 2)
            {
                fields.TryAdd(
                    record.Key,
                    kind ?? record.FirstOrDefault(field => field.Property.IsDefined(typeof(RequiredAttribute), false)) ?? record.First()
                );
            }
        }

        return fields.ToFrozenDictionary();
    }

    // Width alone is another parameter than the width of the fabric.
    private static Message Worded(Violation violation)
    {
        Message detail = violation.Detail;
        if (!Fields.TryGetValue(violation.Pointer, out FlatField? field) || !field.NeedsRecord(violation.Pointer))
        {
            return detail;
        }

        string words = FieldNames.Words(violation.Pointer[(violation.Pointer.LastIndexOf('/') + 1)..]);
        for (int i = 0; i < detail.Arguments.Length; i++)
        {
            if (detail.Arguments[i] is { Kind: ArgumentKind.Field } named && named.Value is string name && name == words)
            {
                return detail with { Arguments = detail.Arguments.SetItem(i, MessageArgument.Of(field.InWords)) };
            }
        }

        return detail;
    }

    private void Report(string name, string code, Message detail)
    {
        if (_violations.Count < MostViolations)
        {
            _violations.Add(new Violation("/" + JsonText.Escape(name), code, detail));
        }
    }
}
