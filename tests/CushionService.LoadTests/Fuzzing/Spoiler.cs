using System.Text;
using System.Text.Json.Nodes;

namespace CushionService.LoadTests.Fuzzing;

/// <summary>Spoils orders with their structure in mind: values beyond every range, fields of other places, lists without end, and bytes
/// that are no JSON at all. The same seed makes the same orders.</summary>
internal sealed class Spoiler(IReadOnlyList<string> orders, int seed)
{
    /// <summary>Texts that are no value, or one of another place.</summary>
    public static string[] Texts { get; } =
    [
        "",
        " ",
        "-1",
        "0",
        "1/0",
        "1e999",
        "NaN",
        "15 1/2",
        "999999999999 in",
        "1/64",
        "½",
        "\0",
        "\ud83e\uddf5",
        "../../etc",
        "<svg onload=x>",
        "in",
        "yd",
        "quick",
        "zipper",
        "main",
    ];

    private readonly Random _random = new(seed);

    /// <summary>A spoilt order, as bytes.</summary>
    public byte[] Next()
    {
        JsonNode order = JsonNode.Parse(orders[_random.Next(orders.Count)])!;
        // What is spoilt is the order, not the patience: a harder search is a longer one.
        order["effort"] = "quick";
        for (int spoilt = _random.Next(5); spoilt > 0; spoilt--)
        {
            Spoil(order);
        }

        byte[] bytes = Encoding.UTF8.GetBytes(order.ToJsonString());
        return _random.Next(5) == 0 ? Scratch(bytes) : bytes;
    }

    /// <summary>The bytes of a message, scratched.</summary>
    public byte[] Scratch(byte[] bytes)
    {
        byte[] scratched = [.. bytes];
        for (int times = _random.Next(1, 6); times > 0 && scratched.Length > 0; times--)
        {
            int at = _random.Next(scratched.Length);
            scratched = _random.Next(5) switch
            {
                0 => scratched[..at],
                1 => [.. scratched[..at], .. scratched[_random.Next(at, scratched.Length)..]],
                2 => [.. scratched[..at], (byte)_random.Next(256), .. scratched[at..]],
                3 => [.. scratched[..at], .. scratched[_random.Next(at + 1)..at], .. scratched[at..]],
                _ => Flipped(scratched, at),
            };
        }

        return scratched;
    }

    private byte[] Flipped(byte[] bytes, int at)
    {
        bytes[at] ^= (byte)(1 << _random.Next(8));
        return bytes;
    }

    private void Spoil(JsonNode order)
    {
        List<JsonNode> nodes = [];
        Collect(order, nodes);
        JsonNode holder = nodes[_random.Next(nodes.Count)];
        if (holder is JsonObject { Count: > 0 } record)
        {
            string name = record.ElementAt(_random.Next(record.Count)).Key;
            switch (_random.Next(8))
            {
                case 0:
                    record.Remove(name);
                    break;
                case 1:
                    record[name + "s"] = record[name]?.DeepClone();
                    break;
                case 2:
                    // A field of one place in another.
                    record[Names(nodes)] = nodes[_random.Next(nodes.Count)].DeepClone();
                    break;
                default:
                    if (name != "effort")
                    {
                        record[name] = Value(nodes, record[name]);
                    }

                    break;
            }
        }
        else if (holder is JsonArray { Count: > 0 } list)
        {
            int at = _random.Next(list.Count);
            switch (_random.Next(4))
            {
                case 0:
                    list.RemoveAt(at);
                    break;
                case 1:
                    int copies = _random.Next(10) == 0 ? 600 : _random.Next(1, 4);
                    for (int copy = 0; copy < copies; copy++)
                    {
                        list.Add(list[at]?.DeepClone());
                    }

                    break;
                default:
                    list[at] = Value(nodes, list[at]);
                    break;
            }
        }
    }

    private JsonNode? Value(List<JsonNode> nodes, JsonNode? old) =>
        _random.Next(12) switch
        {
            0 => null,
            1 => _random.Next(2) == 0,
            2 => Texts[_random.Next(Texts.Length)],
            3 => new string('a', _random.Next(2_000)),
            4 => new JsonArray([.. Enumerable.Range(0, _random.Next(5)).Select(_ => (JsonNode?)_random.Next(100))]),
            5 => new JsonObject(),
            6 => Deep(_random.Next(1, 80)),
            7 => nodes[_random.Next(nodes.Count)].DeepClone(),
            8 => _random.NextDouble() * Math.Pow(10, _random.Next(-9, 19)),
            9 => _random.Next(-3, 300),
            10 => double.MaxValue,
            // A little more or less than it was: near the edges of the rules.
            _ => old is JsonValue value && value.TryGetValue(out double number)
                ? Math.Clamp(number * (0.5 + _random.NextDouble()), double.MinValue, double.MaxValue)
                : _random.Next(-1, 2),
        };

    private string Names(List<JsonNode> nodes)
    {
        JsonObject[] records = [.. nodes.OfType<JsonObject>().Where(record => record.Count > 0)];
        JsonObject record = records[_random.Next(records.Length)];
        return record.ElementAt(_random.Next(record.Count)).Key is "effort" ? "reference"
            : record.ElementAt(_random.Next(record.Count)).Key is { } name && name != "effort" ? name
            : "id";
    }

    private static JsonNode Deep(int depth)
    {
        JsonNode node = new JsonObject();
        for (int level = 0; level < depth; level++)
        {
            node = level % 2 == 0 ? new JsonArray(node) : new JsonObject { ["outline"] = node };
        }

        return node;
    }

    private static void Collect(JsonNode? node, List<JsonNode> nodes)
    {
        if (node is JsonObject record)
        {
            nodes.Add(record);
            foreach (KeyValuePair<string, JsonNode?> member in record)
            {
                Collect(member.Value, nodes);
            }
        }
        else if (node is JsonArray list)
        {
            nodes.Add(list);
            foreach (JsonNode? element in list)
            {
                Collect(element, nodes);
            }
        }
    }
}
