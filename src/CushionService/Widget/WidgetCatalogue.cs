using System.Text.Json;
using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Engine.Messages;
using CushionService.Wording;

namespace CushionService.Widget;

/// <summary>What the form needs of the catalogue, as parts of the widget's module: a page then needs no call before its first quote.
/// Made of the same catalogue that the service answers with.</summary>
internal static class WidgetCatalogue
{
    private const string Cushion = "/cushions/*/";
    private const string Outline = "outline/";

    // Fields of a form besides the sizes of an outline and those of a construction.
    private static readonly string[] Others =
    [
        "quantity",
        "thickness",
        "closure/kind",
        "closure/side",
        "edging/kind",
        "edging/depth",
        "edging/fabric",
        "fill/kind",
        "fill/material",
    ];

    private static readonly CatalogueAnswer Whole = CatalogueWording.In(Language.English);

    private static readonly Dictionary<string, FieldAnswer> Fields = Whole.Fields.ToDictionary(field => field.Pointer);

    /// <summary>The constructions, the outlines and the fields of a form; null for any other part's name.</summary>
    /// <param name="part">The name of a part, as an import names it.</param>
    public static string? Part(string part) =>
        part switch
        {
            "catalogue.js" => $"export const CATALOGUE = {Json(Catalogue())};\n",
            "catalogue-lengths.js" => $"export const LENGTHS = {Json(Lengths())};\n",
            _ => null,
        };

    // An outline whose corners are listed is drawn by order systems, not typed into a form.
    private static object Catalogue()
    {
        Dictionary<string, object[][]> outlines = Whole
            .Outlines.Where(outline => outline.Fields.All(field => !field.Required || IsTyped(field.Pointer)))
            .ToDictionary(
                outline => Word(outline.Kind),
                outline =>
                    outline
                        .Fields.Where(field => IsTyped(field.Pointer))
                        .Select(field => new object[] { Short(field.Pointer)[Outline.Length..], field.Required })
                        .ToArray()
            );
        Dictionary<string, object[][]> own = Whole.Constructions.ToDictionary(
            construction => Word(construction.Kind),
            construction => construction.Fields.SelectMany(Typed).ToArray()
        );
        IEnumerable<string> used = Others
            .Concat(outlines.Values.SelectMany(fields => fields).Select(field => Outline + field[0]))
            .Concat(own.Values.SelectMany(fields => fields).Select(field => (string)field[0]))
            .Distinct();
        return new
        {
            Constructions = Whole.Constructions.ToDictionary(
                construction => Word(construction.Kind),
                construction => new
                {
                    construction.Thickness,
                    Outlines = construction.Outlines.Select(Word).Where(outlines.ContainsKey),
                    Fields = own[Word(construction.Kind)],
                    Closures = construction.Closures.ToDictionary(closure => Word(closure.Kind), closure => closure.Sides.Select(Word)),
                    Edgings = construction.Edgings.Select(edging => Word(edging.Kind)),
                }
            ),
            Outlines = outlines,
            Fields = used.ToDictionary(name => name, name => Described(Fields[Cushion + name])),
        };
    }

    private static object?[] Described(FieldAnswer field) => [Word(field.Type), field.Minimum, field.Maximum, field.Default, field.Choices];

    // A group that must be there is asked for by what it must hold; one that may be left out is the workroom's, not the shopper's.
    private static IEnumerable<object[]> Typed(ConstructionFieldAnswer field) =>
        Fields[field.Pointer].Type != FieldType.Group
            ? IsTyped(field.Pointer)
                ?
                [
                    [Short(field.Pointer), field.Required],
                ]
                : []
            : field.Required
                ? Fields
                    .Values.Where(inner => inner.Required && inner.Pointer.StartsWith(field.Pointer + "/", StringComparison.Ordinal))
                    .Select(inner => new object[] { Short(inner.Pointer), true })
                : [];

    private static bool IsTyped(string pointer) => Fields[pointer].Type is FieldType.Length or FieldType.Number or FieldType.Choice;

    // Steps and minimums of sale are lengths in the unit of sale; every other length without a unit is in the order's.
    private static IEnumerable<string> Lengths() =>
        Fields
            .Values.Where(field => field.Type == FieldType.Length)
            .Select(field => field.Pointer)
            .Where(pointer => !pointer.Contains("/sold/", StringComparison.Ordinal))
            .Where(pointer => !pointer.StartsWith("/candidates/", StringComparison.Ordinal));

    private static string Short(string pointer) => pointer[Cushion.Length..];

    private static string Word<T>(T value)
        where T : struct, Enum => Words<T>.Of(value);

    private static string Json(object value) => JsonSerializer.Serialize(value, JsonSerializerOptions.Web);
}
