using System.Collections;
using System.ComponentModel.DataAnnotations;
using System.Reflection;
using CushionService.Contract;
using CushionService.Engine.Messages;

namespace CushionService.Intake;

/// <summary>The rules that the attributes of one field state. The property's type says which: a length, a text, a number, a word, a list,
/// or a part that is there or not.</summary>
/// <typeparam name="T">The record that has the field.</typeparam>
/// <param name="property">The property that holds it.</param>
internal abstract class FieldCheck<T>(PropertyInfo property)
{
    /// <summary>The property that holds the field.</summary>
    public PropertyInfo Property { get; } = property;

    /// <summary>Whether it may not be left out.</summary>
    public bool IsRequired { get; } = property.IsDefined(typeof(RequiredAttribute));

    /// <summary>Its place among the record's lengths; -1 for another field.</summary>
    public int Slot { get; set; } = -1;

    /// <summary>Its name at the start of a sentence.</summary>
    protected string Words { get; } = FieldNames.Words(property.Name);

    /// <summary>The checks of a record's fields, those left out that any value passes.</summary>
    public static FieldCheck<T>[] All() => [.. typeof(T).GetProperties().Select(Of).OfType<FieldCheck<T>>()];

    /// <summary>Checks the field, which the record has or may not be without, and keeps it if it is a length.</summary>
    /// <param name="record">The record.</param>
    /// <param name="start">Where the record's lengths are kept.</param>
    /// <param name="findings">Takes what is wrong.</param>
    /// <returns>Whether nothing is wrong.</returns>
    public abstract bool Passes(T record, int start, Findings findings);

    /// <summary>Reports that the field is left out.</summary>
    /// <returns>False.</returns>
    protected bool Missing(Findings findings) => Fails(findings, "required", FieldTexts.Required(Words));

    /// <summary>Reports what is wrong with the field.</summary>
    /// <returns>False.</returns>
    protected bool Fails(Findings findings, string code, Message detail, FindingRange? range = null)
    {
        findings.Refuse(Property.Name, code, detail, range);
        return false;
    }

    private static FieldCheck<T>? Of(PropertyInfo property)
    {
        // A choice is known by its enumeration, so its check is made by reflection, once.
        Type type = Nullable.GetUnderlyingType(property.PropertyType) ?? property.PropertyType;
        return type == typeof(Measure) ? new LengthCheck<T>(property)
            : type == typeof(Quantity) ? new QuantityCheck<T>(property)
            : type == typeof(string) ? new TextCheck<T>(property)
            : type == typeof(int) || type == typeof(double) ? new NumberCheck<T>(property)
            : type.IsEnum ? (FieldCheck<T>)Activator.CreateInstance(typeof(ChoiceCheck<,>).MakeGenericType(typeof(T), type), property)!
            : typeof(ICollection).IsAssignableFrom(type) || property.IsDefined(typeof(NumberRangeAttribute)) ? new ListCheck<T>(property)
            : property.IsDefined(typeof(RequiredAttribute)) ? new PresenceCheck<T>(property)
            : null;
    }
}
