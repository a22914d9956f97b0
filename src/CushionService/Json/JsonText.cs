using System.Text.Json;
using CushionService.Contract;
using CushionService.Engine.Specifications;

namespace CushionService.Json;

/// <summary>JSON as text: whether it is JSON at all, and the names and texts in it, also those that no string can
/// have.</summary>
internal static class JsonText
{
    /// <summary>Why a text is not JSON that is read here: empty, malformed, or nested deeper than
    /// <see cref="ContractJson.MaxDepth"/>. Null when it is JSON, whatever its members.</summary>
    /// <param name="text">The text, in UTF-8.</param>
    public static Violation? ViolationOf(ReadOnlySpan<byte> text)
    {
        if (text.Trim(" \t\r\n"u8).IsEmpty)
        {
            return new Violation("", "not-json", JsonTexts.Empty);
        }

        // Depth is counted here: to the reader, a text that is nested too deep is no different from one that is not
        // JSON.
        Utf8JsonReader reader = new(text, new JsonReaderOptions { MaxDepth = Limits.OrderBytes });
        try
        {
            while (reader.Read())
            {
                if (
                    reader.TokenType is JsonTokenType.StartObject or JsonTokenType.StartArray
                    && reader.CurrentDepth >= ContractJson.MaxDepth
                )
                {
                    return new Violation("", "too-deep", JsonTexts.TooDeep(ContractJson.MaxDepth));
                }
            }
        }
        catch (JsonException exception)
        {
            // The reader counts from 0, people from 1.
            return new Violation(
                "",
                "not-json",
                JsonTexts.NotJson((exception.LineNumber ?? 0) + 1, (exception.BytePositionInLine ?? 0) + 1)
            );
        }

        return null;
    }

    /// <summary>The text of a string; null when an escape in it is half of a surrogate pair, which cannot be written in
    /// UTF-8.</summary>
    public static string? Of(JsonElement text)
    {
        try
        {
            return text.GetString();
        }
        catch (InvalidOperationException)
        {
            return null;
        }
    }

    /// <summary>The name of a member; with its escapes when one is half of a surrogate pair.</summary>
    public static string NameOf(JsonProperty member)
    {
        try
        {
            return member.Name;
        }
        catch (InvalidOperationException)
        {
            return member.ToString().Split('"')[1];
        }
    }

    /// <summary>A name as a step of a JSON Pointer (RFC 6901, section 3): a tilde is written ~0, and a slash
    /// ~1.</summary>
    public static string Escape(string name) =>
        name.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal);

    /// <summary>What form a value has.</summary>
    public static JsonForm FormOf(JsonElement value) =>
        value.ValueKind switch
        {
            JsonValueKind.Object => JsonForm.Object,
            JsonValueKind.Array => JsonForm.List,
            JsonValueKind.String => JsonForm.Text,
            JsonValueKind.Number => JsonForm.Number,
            JsonValueKind.True or JsonValueKind.False => JsonForm.TrueOrFalse,
            _ => JsonForm.Null,
        };
}
