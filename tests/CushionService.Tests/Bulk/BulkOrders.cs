using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Bulk;

/// <summary>Orders for tests of many: pillows of many sizes, now and then one that breaks a rule, or is no order at all.</summary>
internal static class BulkOrders
{
    /// <summary>Whether an order breaks a rule.</summary>
    public static bool IsUnsound(int number) => number % 50 == 7;

    /// <summary>Whether an order cannot be read.</summary>
    public static bool IsUnreadable(int number) => number % 100 == 13;

    /// <summary>An order by its number, on one line.</summary>
    public static byte[] Of(int number)
    {
        if (IsUnreadable(number))
        {
            return "{ no order"u8.ToArray();
        }

        JsonNode order = JsonNode.Parse(Repository.Read("src", "CushionService", "Demo", "pillow.json"))!;
        order["reference"] = string.Create(CultureInfo.InvariantCulture, $"pillow-{number}");
        order["cushions"]![0]!["outline"]!["width"] = IsUnsound(number) ? 0 : 10 + (number % 40 / 2.0);
        return Encoding.UTF8.GetBytes(order.ToJsonString());
    }

    /// <summary>A file of the first orders, one on each line.</summary>
    public static byte[] File(int count) => [.. Enumerable.Range(0, count).SelectMany(number => (byte[])[.. Of(number), (byte)'\n'])];
}
