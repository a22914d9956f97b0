using System.Collections;
using System.Collections.Immutable;
using System.Reflection;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Intake;
using Outline = CushionService.Contract.Orders.Outline;

namespace CushionService.Rest.Estimating;

/// <summary>A field of an order of one cushion and one fabric, as a parameter of a query.</summary>
/// <remarks>The names come from the records: a field of the cushion or of its outline keeps its name, any other comes
/// after the name of its record, as <c>fabricWidth</c>, and a record's kind takes the record's own name, as
/// <c>closure</c>. A new field of the contract needs no code here.</remarks>
/// <param name="Name">The parameter.</param>
/// <param name="Pointer">The place of the value in the order, as a JSON Pointer.</param>
/// <param name="Property">The member that it fills.</param>
internal sealed record FlatField(string Name, string Pointer, PropertyInfo Property)
{
    // What only gives names, what is bought but not cut, and what only an order of several fabrics needs.
    private static readonly ImmutableHashSet<Type> LeftOut = [typeof(CushionFabrics), typeof(Fill), typeof(Price)];
    private static readonly ImmutableHashSet<string> LeftOutNames =
    [
        "Id",
        "Label",
        "Fabric",
        "Reference",
        "Currency",
        "PriceBook",
        "Item",
        "Lot",
    ];

    /// <summary>Every parameter, in the order of the contract: of the order, the cushion, the fabric and the
    /// workroom.</summary>
    public static ImmutableArray<FlatField> All { get; } =
    [
        .. Of(typeof(Order), "", "").Where(field => field.Pointer.LastIndexOf('/') == 0),
        .. Of(typeof(Cushion), "/cushions/0", ""),
        .. Of(typeof(Fabric), "/fabrics/0", "fabric"),
        .. Of(typeof(Workroom), "/workroom", "workroom"),
    ];

    /// <summary>The outlines that parameters can describe: those which need no list.</summary>
    public static ImmutableArray<string> Outlines { get; } =
    [
        .. Enum.GetValues<OutlineKind>()
            .Where(kind => OutlineFields.Required(kind).All(name => All.Any(field => field.Name == FieldNames.Json(name))))
            .Select(Words<OutlineKind>.Of),
    ];

    /// <summary>The type of the value, or of each value of a list.</summary>
    public Type Type { get; } = Simple(Property.PropertyType);

    /// <summary>Whether it takes several values, separated by commas.</summary>
    public bool IsList { get; } = IsListType(Property.PropertyType);

    /// <summary>Whether it says how the fabric is sold, in the unit of sale.</summary>
    public bool IsOfSale { get; } = Property.DeclaringType == typeof(Sale);

    /// <summary>What sentences call it where its property's name alone could be taken for another parameter.</summary>
    public Message InWords =>
        Property.DeclaringType == typeof(Fabric)
            ? EstimateTexts.OfFabric(FieldNames.Words(Property.Name))
            : EstimateTexts.OfParameter(FieldNames.Words(Property.Name), Name);

    /// <summary>Whether a sentence about a place says too little with the last name of the place alone.</summary>
    /// <param name="pointer">The place, which is this field's or that of its record.</param>
    public bool NeedsRecord(string pointer) => pointer == Pointer ? Name != FieldNames.Json(Property.Name) : Property.Name != "Kind";

    // The simple fields of a record, and those of the records in it. Lists of records have no place in a query.
    private static IEnumerable<FlatField> Of(Type record, string at, string prefix)
    {
        foreach (PropertyInfo property in record.GetProperties().Where(property => !LeftOutNames.Contains(property.Name)))
        {
            Type type = Simple(property.PropertyType);
            string pointer = $"{at}/{FieldNames.Json(property.Name)}";
            bool kind = property.Name == "Kind" && prefix.Length > 0;
            string name = kind ? prefix : FieldNames.Json(prefix + property.Name);
            if (type.IsEnum || type.IsPrimitive || type == typeof(Measure) || type == typeof(string))
            {
                yield return new FlatField(FieldNames.Json(name), pointer, property);
            }
            else if (type.Namespace == record.Namespace && !IsListType(property.PropertyType) && !LeftOut.Contains(type))
            {
                string inner = prefix.Length == 0 ? FieldNames.Json(property.Name) : prefix + property.Name;
                foreach (FlatField field in Of(type, pointer, inner))
                {
                    yield return type == typeof(Outline) && field.Property.Name != nameof(Outline.Kind)
                        ? field with
                        {
                            Name = FieldNames.Json(field.Property.Name),
                        }
                        : field;
                }
            }
        }
    }

    // The type of a value, or of an element, without null.
    private static Type Simple(Type type) => IsListType(type) ? type.GetGenericArguments()[0] : Nullable.GetUnderlyingType(type) ?? type;

    // Text is a sequence of characters, and no list.
    private static bool IsListType(Type type) => type != typeof(string) && typeof(IEnumerable).IsAssignableFrom(type);
}
