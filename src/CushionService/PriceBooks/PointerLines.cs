using System.Text.Json;

namespace CushionService.PriceBooks;

/// <summary>The line on which each value of a JSON text begins, by its JSON Pointer.</summary>
internal sealed class PointerLines
{
    private readonly Dictionary<string, long> _lines = [];

    /// <summary>Reads a text.</summary>
    /// <exception cref="JsonException">It is not JSON; the exception knows the line, from 0.</exception>
    public PointerLines(ReadOnlySpan<byte> text)
    {
        Utf8JsonReader reader = new(text);
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
                pointer =
                    $"{within.Peek().Pointer}/{reader.GetString()!.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal)}";
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

                _lines.TryAdd(pointer, line);
                if (reader.TokenType is JsonTokenType.StartObject or JsonTokenType.StartArray)
                {
                    within.Push((pointer, reader.TokenType == JsonTokenType.StartArray ? 0 : -1));
                }
            }
        }
    }

    /// <summary>The line of a value, or of the nearest that it would stand in.</summary>
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
