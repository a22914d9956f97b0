using System.Text.Json;
using CushionService.Contract;

namespace CushionService.Json;

/// <summary>Finds texts with lists that are far too long, before a record is made for each of their entries: a compressed body of a
/// kilobyte may have half a million.</summary>
internal static class LongLists
{
    // In fewer bytes there are too few entries for the time that they take to matter.
    private const int Short = 4096;

    /// <summary>The most entries of any list of an order.</summary>
    public static int Most { get; } = typeof(Contract.Orders.Order).Assembly.GetTypes().Max(MostOf);

    /// <summary>The most entries that a member may have, and one more, which shows that there are too many.</summary>
    /// <param name="range">The range of the member; null where it has none.</param>
    public static int Reach(NumberRangeAttribute? range) => (int)(range?.Maximum ?? Most) + 1;

    /// <summary>Whether a text has a list of more entries than any list of an order may have. Nothing is thrown: what is no JSON is for
    /// others to say.</summary>
    /// <param name="body">The text, in UTF-8.</param>
    public static bool AreIn(ReadOnlySpan<byte> body)
    {
        if (body.Length < Short)
        {
            return false;
        }

        // Entries of each open list; of an object, the members, which are not counted.
        Span<int> entries = stackalloc int[ContractJson.MaxDepth + 1];
        Span<bool> isList = stackalloc bool[ContractJson.MaxDepth + 1];
        var reader = new Utf8JsonReader(body, new JsonReaderOptions { MaxDepth = ContractJson.MaxDepth });
        int open = 0;
        try
        {
            while (reader.Read())
            {
                if (reader.TokenType is JsonTokenType.EndArray or JsonTokenType.EndObject)
                {
                    open--;
                    continue;
                }

                if (isList[open] && ++entries[open] > Most)
                {
                    return true;
                }

                if (reader.TokenType is JsonTokenType.StartArray or JsonTokenType.StartObject)
                {
                    open++;
                    (entries[open], isList[open]) = (0, reader.TokenType == JsonTokenType.StartArray);
                }
            }
        }
        catch (JsonException)
        {
            // The reader of the order, or its diagnosis, says what is wrong with it.
        }

        return false;
    }

    private static int MostOf(Type record) =>
        record.Namespace != typeof(Contract.Orders.Order).Namespace
            ? 0
            : record
                .GetProperties()
                .Where(property => ContractJson.ElementOf(property.PropertyType) is not null)
                .Select(property => Attribute.GetCustomAttribute(property, typeof(NumberRangeAttribute)) as NumberRangeAttribute)
                .Max(range => (int?)range?.Maximum)
                ?? 0;
}
