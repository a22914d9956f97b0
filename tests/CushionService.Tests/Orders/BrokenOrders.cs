using System.Text;
using System.Text.Json.Nodes;

namespace CushionService.Tests.Orders;

/// <summary>Sound orders, each broken in one way: the form, the types, the values, or the bytes.</summary>
internal static class BrokenOrders
{
    private static readonly (string Name, Func<string, Random, byte[]> Break)[] Ways =
    [
        (
            "a string where a record or list is",
            (order, random) => Replace(order, random, node => node is JsonObject or JsonArray, "\"text\"")
        ),
        ("a record where a value is", (order, random) => Replace(order, random, node => node is JsonValue, "{\"value\":1}")),
        ("a list where a value is", (order, random) => Replace(order, random, node => node is JsonValue, "[1]")),
        (
            "true where a value is",
            (order, random) => Replace(order, random, node => node is JsonValue value && !value.TryGetValue<bool>(out _), "true")
        ),
        ("NaN as a word", (order, random) => Replace(order, random, IsNumber, "NaN")),
        ("NaN as text", (order, random) => Replace(order, random, IsNumber, "\"NaN\"")),
        ("Infinity as a word", (order, random) => Replace(order, random, IsNumber, "-Infinity")),
        ("a number beyond double", (order, random) => Replace(order, random, IsNumber, "1e999")),
        ("a huge number", (order, random) => Replace(order, random, IsNumber, "1e300")),
        ("a negative number", (order, random) => Replace(order, random, IsNumber, "-7")),
        ("a number of a thousand digits", (order, random) => Replace(order, random, IsNumber, new string('9', 1000))),
        ("a hexadecimal number", (order, random) => Replace(order, random, IsNumber, "0x10")),
        ("no fabric", (order, _) => Set(order, "fabrics", new JsonArray())),
        (
            "nothing to make",
            (order, _) => Set(Text(Set(Text(Set(order, "cushions", new JsonArray())), "bays", new JsonArray())), "pieces", new JsonArray())
        ),
        ("a hole in a list", (order, _) => Set(order, "fabrics", new JsonArray((JsonNode?)null))),
        ("an unknown word", (order, random) => Replace(order, random, node => IsWord(node), "\"sideways\"")),
        ("a word in capitals", (order, random) => Replace(order, random, node => IsWord(node), "\"BOXED\"")),
        ("a number for a word", (order, random) => Replace(order, random, node => IsWord(node), "0")),
        ("an unknown field", (order, random) => Replace(order, random, node => node is JsonObject, "{\"colour\":\"blue\"}")),
        ("a field twice", (order, _) => Bytes("{\"units\":\"in\"," + order[1..])),
        (
            "nesting without end",
            (order, random) => Replace(order, random, node => node is JsonObject, new string('[', 5000) + new string(']', 5000))
        ),
        ("nesting left open", (order, _) => Bytes(string.Concat(Enumerable.Repeat("{\"cushions\":[", 20_000)))),
        ("a body cut short", (order, random) => Bytes(order)[..random.Next(order.Length)]),
        ("a body with a tail", (order, _) => Bytes(order + "]")),
        ("UTF-16", (order, _) => Encoding.Unicode.GetBytes(order)),
        (
            "UTF-16, big end first, with its mark",
            (order, _) => [.. Encoding.BigEndianUnicode.Preamble, .. Encoding.BigEndianUnicode.GetBytes(order)]
        ),
        ("UTF-32", (order, _) => Encoding.UTF32.GetBytes(order)),
        ("bytes that are not UTF-8", (order, random) => Spoil(Bytes(order), random)),
        ("half a surrogate pair", (order, _) => Bytes("{\"label\":\"\\udc00\"," + order[1..])),
        ("a control character in text", (order, _) => Bytes("{\"reference\":\"a\u0001b\"}")),
        ("zeros", (order, _) => new byte[order.Length]),
    ];

    /// <summary>How many ways there are.</summary>
    public static int Kinds => Ways.Length;

    /// <summary>A broken order, and in which way.</summary>
    public static (string Way, byte[] Body) Of(int number)
    {
        (string name, Func<string, Random, byte[]> spoil) = Ways[number % Ways.Length];
        return (name, spoil(OrderGenerator.Sound(number).ToJsonString(), new Random(number)));
    }

    private static byte[] Replace(string order, Random random, Func<JsonNode?, bool> chosen, string by)
    {
        JsonNode root = JsonNode.Parse(order)!;
        JsonNode[] candidates = [.. Within(root).Where(node => chosen(node))];
        candidates[random.Next(candidates.Length)].ReplaceWith("@@");
        return Bytes(root.ToJsonString().Replace("\"@@\"", by, StringComparison.Ordinal));
    }

    private static IEnumerable<JsonNode> Within(JsonNode node)
    {
        IEnumerable<JsonNode?> inner = node switch
        {
            JsonObject record => record.Select(member => member.Value),
            JsonArray list => list,
            _ => [],
        };
        return inner.OfType<JsonNode>().SelectMany(child => Within(child).Prepend(child));
    }

    // A coordinate may be negative: numbers in lists are left alone.
    private static bool IsNumber(JsonNode? node) =>
        node is JsonValue { Parent: JsonObject } value && value.GetValueKind() == System.Text.Json.JsonValueKind.Number;

    private static bool IsWord(JsonNode? node) =>
        node?.Parent is JsonObject
        && node.GetPropertyName() is "units" or "effort" or "construction" or "kind" or "per" or "unit"
        && node is JsonValue;

    private static byte[] Set(string order, string field, JsonNode value)
    {
        JsonObject root = JsonNode.Parse(order)!.AsObject();
        root[field] = value;
        return Bytes(root.ToJsonString());
    }

    private static byte[] Spoil(byte[] order, Random random)
    {
        order[random.Next(order.Length)] = 0xFF;
        return order;
    }

    private static byte[] Bytes(string text) => Encoding.UTF8.GetBytes(text);

    private static string Text(byte[] bytes) => Encoding.UTF8.GetString(bytes);
}
