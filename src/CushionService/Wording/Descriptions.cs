using System.Collections.Frozen;
using System.Reflection;
using CushionService.Engine.Messages;

namespace CushionService.Wording;

/// <summary>What the fields of an order are, in every language: the summaries of the contract's properties, as messages.</summary>
internal static class Descriptions
{
    // A message of this name is found by the record and the property together: CushionThickness for Cushion.Thickness.
    private static readonly FrozenDictionary<string, Message> ByName = typeof(DescriptionTexts)
        .GetProperties(BindingFlags.Public | BindingFlags.Static)
        .ToFrozenDictionary(text => text.Name, text => (Message)text.GetValue(null)!);

    private static readonly Lazy<ContractComments> Comments = new(() => new ContractComments());

    /// <summary>The description of a field, or its English summary where DescriptionTexts.resx has none.</summary>
    /// <param name="property">A property of the contract's orders.</param>
    /// <param name="writer">Writes in the reader's language.</param>
    public static string Of(PropertyInfo property, MessageWriter writer) =>
        MessageOf(property) is { } text ? writer.Text(text) : Comments.Value.Of(property);

    /// <summary>The description as a message; null where there is none.</summary>
    /// <param name="property">A property of the contract's orders.</param>
    public static Message? MessageOf(PropertyInfo property) => ByName.GetValueOrDefault(property.DeclaringType!.Name + property.Name);
}
