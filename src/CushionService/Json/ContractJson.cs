using System.Collections;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using CushionService.Contract;
using CushionService.Contract.Answers;

namespace CushionService.Json;

/// <summary>How the contract's records are written as JSON, and how strictly they are read.</summary>
/// <remarks>The serializer compiles accessors once for each type. Its source generator would pass the members of
/// init-only records through an array of objects on every read.</remarks>
internal static class ContractJson
{
    /// <summary>Objects and lists within each other, at most. No order needs ten; the rest is room for mistakes, which
    /// the diagnosis names.</summary>
    public const int MaxDepth = 32;

    /// <summary>The options in use. They cannot be changed any more.</summary>
    public static JsonSerializerOptions Options { get; } = Frozen();

    /// <summary>Sets every option that the contract depends on: names in camel case, exactly spelled; no unknown
    /// member, none twice; no number in text; words instead of the numbers of enumerations.</summary>
    /// <param name="options">Options that are not in use yet.</param>
    public static void Configure(JsonSerializerOptions options)
    {
        options.PropertyNamingPolicy = JsonNamingPolicy.CamelCase;
        options.PropertyNameCaseInsensitive = false;
        options.NumberHandling = JsonNumberHandling.Strict;
        options.UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow;
        options.AllowDuplicateProperties = false;
        options.MaxDepth = MaxDepth;
        // Answers are never part of a page, so a plus sign and a multiplication sign need no escape.
        options.Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping;
        options.Converters.Add(new WordConverterFactory());
        options.Converters.Add(new FiniteNumberConverter());
        options.TypeInfoResolver = new DefaultJsonTypeInfoResolver { Modifiers = { LeaveOutEmptyRanges, RefuseHolesInLists } };
    }

    // Frozen before the first use, so that no part of the service can change what another part writes.
    private static JsonSerializerOptions Frozen()
    {
        JsonSerializerOptions options = new();
        Configure(options);
        options.MakeReadOnly();
        return options;
    }

    // Every member of an answer is written, null where it has no value; only the range of a violation is left out where
    // none applies.
    private static void LeaveOutEmptyRanges(JsonTypeInfo type)
    {
        if (type.Type != typeof(ViolationAnswer))
        {
            return;
        }

        foreach (JsonPropertyInfo property in type.Properties.Where(property => property.PropertyType == typeof(double?)))
        {
            property.ShouldSerialize = (_, value) => value is not null;
        }
    }

    // The serializer lets null into a list of records, whatever its annotations say.
    private static void RefuseHolesInLists(JsonTypeInfo type)
    {
        JsonPropertyInfo[] lists = [.. type.Properties.Where(property => ElementOf(property.PropertyType) is { IsValueType: false })];
        if (type.Type.Namespace == typeof(Contract.Orders.Order).Namespace && lists.Length > 0)
        {
            type.OnDeserialized = order =>
            {
                foreach (JsonPropertyInfo list in lists)
                {
                    foreach (object? element in (IEnumerable?)list.Get!(order) ?? Array.Empty<object>())
                    {
                        _ = element ?? throw new JsonException($"A member of {list.Name} is null.");
                    }
                }
            };
        }
    }

    /// <summary>The type of the elements of a list; null when the type is not a list of the contract.</summary>
    /// <param name="type">The type of a member.</param>
    public static Type? ElementOf(Type type) =>
        type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IReadOnlyList<>) ? type.GetGenericArguments()[0] : null;

    /// <summary>The type of a pair's coordinates; null when the type is not a pair.</summary>
    /// <param name="type">The type of a member.</param>
    public static Type? CoordinateOf(Type type) =>
        Array
            .Find(type.GetInterfaces(), face => face.IsGenericType && face.GetGenericTypeDefinition() == typeof(IPair<,>))
            ?.GetGenericArguments()[1];
}
