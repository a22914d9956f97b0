using System.Text.Json;
using CushionService.Json;

namespace CushionService.PriceBooks;

/// <summary>The line on which each value of a JSON text begins, by its JSON Pointer (RFC 6901). Whoever writes a price
/// book by hand looks for a line, and not for a pointer.</summary>
internal sealed class PointerLines
{
    private readonly Dictionary<string, long> _lines = [];

    /// <summary>Reads a text.</summary>
    /// <param name="text">JSON text in UTF-8.</param>
    /// <exception cref="JsonException">The text is not JSON; the exception has the line, from 0.</exception>
    public PointerLines(ReadOnlySpan<byte> text)
    {
        Utf8JsonReader reader = new(text);
        // The objects and lists around the token. The index of a list is that of its next element; an object has -1.
        Stack<(string Pointer, int Index)> within = [];
        string pointer = "";
        long line = 1;
        int read = 0;
        while (reader.Read())
        {
            int at = (int)reader.TokenStartIndex;
            line += text[read..at].Count((byte)'\n');
            read = at;
            if (reader.TokenType == JsonTokenType.PropertyName)
            {
                pointer = $"{within.Peek().Pointer}/{JsonText.Escape(reader.GetString()!)}";
            }
            else if (reader.TokenType is JsonTokenType.EndObject or JsonTokenType.EndArray)
            {
                within.Pop();
            }
            else
            {
                if (within.TryPeek(out (string Pointer, int Index) list) && list.Index >= 0)
                {
                    pointer = $"{list.Pointer}/{list.Index}";
                    within.Pop();
                    within.Push(list with { Index = list.Index + 1 });
                }

                // Of a member that is given twice, the first counts.
                _lines.TryAdd(pointer, line);
                if (reader.TokenType is JsonTokenType.StartObject or JsonTokenType.StartArray)
                {
                    within.Push((pointer, reader.TokenType == JsonTokenType.StartArray ? 0 : -1));
                }
            }
        }
    }

    /// <summary>The line of a value, from 1; of the nearest value around it when it is missing.</summary>
    /// <param name="pointer">The JSON Pointer of the value.</param>
    public long Of(string pointer)
    {
        long line;
        while (!_lines.TryGetValue(pointer, out line) && pointer.Length > 0)
        {
            pointer = pointer[..pointer.LastIndexOf('/')];
        }

        return Math.Max(line, 1);
    }
}
