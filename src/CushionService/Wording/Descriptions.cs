using System.Collections.Frozen;
using System.Reflection;
using CushionService.Engine.Messages;

namespace CushionService.Wording;

/// <summary>What the fields of an order are, in every language: the summaries of the contract's properties, as messages.</summary>
internal static class Descriptions
{
    private static readonly FrozenDictionary<string, Message> ByName = typeof(DescriptionTexts)
        .GetProperties(BindingFlags.Public | BindingFlags.Static)
        .ToFrozenDictionary(text => text.Name, text => (Message)text.GetValue(null)!);

    /// <summary>The description of a field.</summary>
    /// <param name="property">A property of the contract's orders.</param>
    /// <exception cref="KeyNotFoundException">It has none in DescriptionTexts.resx.</exception>
    public static Message Of(PropertyInfo property) => ByName[property.DeclaringType!.Name + property.Name];
}
