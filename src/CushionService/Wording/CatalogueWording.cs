using System.Collections;
using System.ComponentModel.DataAnnotations;
using System.Reflection;
using System.Text.Json;
using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Intake;

namespace CushionService.Wording;

/// <summary>The catalogue: the engine's offers, and every field of an order as its attributes describe it.</summary>
internal static class CatalogueWording
{
    // Indexed by the language's number.
    private static readonly Lazy<CatalogueAnswer>[] Catalogues =
    [
        .. Enum.GetValues<Language>().Select(language => new Lazy<CatalogueAnswer>(() => Of(language))),
    ];

    /// <summary>The catalogue in a language. It is made once.</summary>
    /// <remarks>It depends on nothing but the engine's version and the language, so it is made when it is first asked for
    /// and kept.</remarks>
    /// <param name="language">The language of its descriptions; names of fields and words of the contract are the same in
    /// all.</param>
    public static CatalogueAnswer In(Language language) => Catalogues[(int)language].Value;

    private static CatalogueAnswer Of(Language language)
    {
        // No description holds a measure.
        var writer = new MessageWriter(language, LengthUnit.Centimetre);
        return new()
        {
            Engine = EngineVersion.Current,
            Constructions = [.. ConstructionRegistry.All.Select(construction => Of(construction.Offer, writer))],
            Outlines = [.. Enum.GetValues<OutlineKind>().Select(Of)],
            Fields = [.. FieldsOf(typeof(Order), "", writer)],
        };
    }

    private static OutlineAnswer Of(OutlineKind kind)
    {
        return new()
        {
            Kind = kind,
            Fields =
            [
                .. OutlineFields.Required(kind).Select(name => Field(name, true)),
                .. OutlineFields.Optional(kind).Select(name => Field(name, false)),
            ],
        };

        static OutlineFieldAnswer Field(string name, bool required) =>
            new() { Pointer = $"/cushions/*/outline/{FieldNames.Json(name)}", Required = required };
    }

    private static ConstructionAnswer Of(ConstructionOffer offer, MessageWriter writer) =>
        new()
        {
            Kind = offer.Kind,
            Description = writer.Text(offer.Description),
            Outlines = offer.Outlines,
            Closures = [.. offer.Closures.Select(closure => new ClosureOption { Kind = closure.Kind, Sides = closure.Sides })],
            Thickness = offer.Thickness,
            Boxing = offer.Joins,
            Handles = offer.Handles,
            Edgings =
            [
                .. offer.Edgings.Select(edging => new EdgingOption
                {
                    Kind = edging.Kind,
                    Places = edging.Places,
                    Usual = edging.Usual,
                }),
            ],
            Additions = offer.Additions,
            Fields =
            [
                .. offer.Fields.Select(field => new ConstructionFieldAnswer
                {
                    Pointer = $"/cushions/*/{FieldNames.Json(field.Field.ToString())}",
                    Required = field.Required,
                }),
            ],
        };

    // In the order of the contract's records, each group before its own fields; "*" is any entry of a list.
    private static IEnumerable<FieldAnswer> FieldsOf(Type record, string at, MessageWriter writer)
    {
        foreach (PropertyInfo property in record.GetProperties())
        {
            Type type = Nullable.GetUnderlyingType(property.PropertyType) ?? property.PropertyType;
            // A text is a sequence of characters to .NET, but one value to a caller.
            Type? entry = type != typeof(string) && typeof(IEnumerable).IsAssignableFrom(type) ? type.GetGenericArguments()[0] : null;
            string pointer = $"{at}/{FieldNames.Json(property.Name)}";
            FieldType kind = TypeOf(type, entry);
            var lengths = property.GetCustomAttribute<LengthRangeAttribute>();
            var numbers = property.GetCustomAttribute<NumberRangeAttribute>();
            yield return new FieldAnswer
            {
                Pointer = pointer,
                Type = kind,
                Description = Descriptions.Of(property, writer),
                Required = property.IsDefined(typeof(RequiredAttribute)),
                // A list's range is that of how many entries it has.
                Minimum = numbers?.Minimum.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? lengths?.Minimum,
                Maximum = numbers?.Maximum.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? lengths?.Maximum,
                Default = DefaultWording.Of(lengths?.Default ?? numbers?.Default, writer),
                Choices = (entry ?? type).IsEnum
                    ? [.. Enum.GetNames(entry ?? type).Select(JsonNamingPolicy.KebabCaseLower.ConvertName)]
                    : [],
            };
            // An entry that is no record of the contract is a field of its own, for its range.
            if (entry is { IsEnum: false } && entry.Namespace != typeof(Order).Namespace)
            {
                yield return Entry(property, entry, $"{pointer}/*");
            }
            else if (kind is FieldType.Group or FieldType.List && entry is not { IsEnum: true })
            {
                foreach (FieldAnswer field in FieldsOf(entry ?? type, entry is null ? pointer : $"{pointer}/*", writer))
                {
                    yield return field;
                }
            }
        }
    }

    // An entry of a list of lengths, numbers or texts, which has no name of its own.
    private static FieldAnswer Entry(PropertyInfo list, Type entry, string pointer)
    {
        var lengths = list.GetCustomAttribute<LengthRangeAttribute>();
        var numbers = list.GetCustomAttribute<EntryRangeAttribute>();
        return new FieldAnswer
        {
            Pointer = pointer,
            Type = TypeOf(entry, null),
            Description = "",
            Required = true,
            Minimum = lengths?.Minimum ?? numbers?.Minimum.ToString(System.Globalization.CultureInfo.InvariantCulture),
            Maximum = lengths?.Maximum ?? numbers?.Maximum.ToString(System.Globalization.CultureInfo.InvariantCulture),
            Default = null,
            Choices = [],
        };
    }

    // The kind of a field as a form would show it: lengths are texts or numbers with a unit, hence a kind of their own.
    private static FieldType TypeOf(Type type, Type? entry) =>
        entry is not null ? FieldType.List
        : type == typeof(Measure) ? FieldType.Length
        : type == typeof(string) ? FieldType.Text
        : type == typeof(bool) ? FieldType.Switch
        : type.IsEnum ? FieldType.Choice
        : type.IsPrimitive || type == typeof(Quantity) ? FieldType.Number
        : FieldType.Group;
}
