using System.Reflection;

namespace CushionService.Access;

/// <summary>Whether the section <c>Access</c> has the form of its options. The binder leaves out what it does not know, and a
/// single value where a list belongs: a service that was meant to be guarded would be open, and nobody would know.</summary>
internal static class AccessShape
{
    /// <summary>Finds what the binder would leave out.</summary>
    /// <param name="section">The section, or a part of it.</param>
    /// <param name="type">The type that it is bound to.</param>
    /// <param name="errors">Gets a sentence for each fault, without any value.</param>
    public static void Check(IConfigurationSection section, Type type, List<string> errors)
    {
        Type? entry = type.GetElementType();
        IEnumerable<IConfigurationSection> parts = section.GetChildren();
        if (entry is null && !IsGroup(type))
        {
            if (parts.Any())
            {
                errors.Add($"{section.Path} is one value, and neither a list nor a group of settings.");
            }

            return;
        }

        // An empty list or group of a file is there with an empty value.
        if (section.Value is { Length: > 0 })
        {
            errors.Add(
                entry is null
                    ? $"{section.Path} is a group of settings, and not one value."
                    : $"{section.Path} is a list, also of one: its first entry is {section.Path}:0."
            );
        }

        foreach (IConfigurationSection part in parts)
        {
            if (entry is not null)
            {
                CheckEntry(part, entry, errors);
            }
            else if (Setting(type, part.Key) is { } setting)
            {
                Check(part, setting, errors);
            }
            else
            {
                errors.Add($"{part.Path}: there is no such setting.");
            }
        }
    }

    private static void CheckEntry(IConfigurationSection part, Type entry, List<string> errors)
    {
        if (part.Key.All(char.IsAsciiDigit))
        {
            Check(part, entry, errors);
        }
        else
        {
            errors.Add($"{part.Path}: the entries of a list are numbered, from 0.");
        }
    }

    private static bool IsGroup(Type type) => type == typeof(AccessOptions) || typeof(GrantOptions).IsAssignableFrom(type);

    // Names of settings are the same in capitals. Null for a name that there is not.
    private static Type? Setting(Type group, string name) =>
        group.GetProperty(name, BindingFlags.Public | BindingFlags.Instance | BindingFlags.IgnoreCase) is { CanWrite: true } property
            ? property.PropertyType
            : null;
}
