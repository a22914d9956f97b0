using System.Text;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization.Metadata;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Desk;
using CushionService.Engine.Messages;
using CushionService.Intake;
using CushionService.Json;
using CushionService.Tests.Orders;
using CushionService.Wording;

namespace CushionService.Tests.Intake;

/// <summary>No rule throws, whatever an order holds: a sound order with one to four fields changed to something that a caller might
/// send.</summary>
public sealed class AnyOrderTests
{
    private const int Orders = 6000;

    // JSON texts: lengths, amounts and names that are almost right, numbers out of every range, parts that are missing.
    private static readonly string[] Odd =
    [
        "null",
        "0",
        "-0",
        "-1",
        "0.0000001",
        "1",
        "2",
        "3.5",
        "12",
        "1e3",
        "2147483647",
        "1e28",
        "1e308",
        "-1e308",
        "1e-300",
        "\"\"",
        "\" \"",
        "\"1/0\"",
        "\"1/3\"",
        "\"-1/2\"",
        "\"15-1/2\"",
        "\"1\\u0000/2\"",
        "\"9999999999/1\"",
        "\"9223372036854775807 1/2\"",
        "\"1e999999999\"",
        "\"1e-999999999\"",
        "\"18.90\\n\"",
        "\"\\u0661\\u0668\"",
        "\"\\uff11\\uff12 in\"",
        "\"NaN\"",
        "\"main\"",
        "\"trim\"",
        "\"velvet\"",
        "\"foam\"",
        "\"seat\"",
        "\"10 m\"",
        "\"38.5 cm\"",
        "\"1/8\"",
        "true",
        "false",
        "[]",
        "[null]",
        "{}",
    ];

    private static readonly FieldAnswer[] Fields = [.. CatalogueWording.In(Language.English).Fields];

    [Fact]
    public void No_rule_throws_on_any_order_that_can_be_read()
    {
        int read = 0,
            sound = 0;
        for (int number = 0; number < Orders; number++)
        {
            JsonNode changed = Changed(new Random(number));
            byte[] body = Encoding.UTF8.GetBytes(changed.ToJsonString());
            Order? order = FormDiagnosis.Of(body, (JsonTypeInfo<Order>)ContractJson.Options.GetTypeInfo(typeof(Order))).Read;
            if (order is null)
            {
                continue;
            }

            read++;
            foreach (Purpose purpose in Enum.GetValues<Purpose>())
            {
                try
                {
                    Purpose<ValidationAnswer> checking = Purposes.Validation with { Rules = purpose };
                    sound += new OrderDesk().Handle(new(order, []), checking, CancellationToken.None).Answer!.Valid ? 1 : 0;
                }
                catch (Exception fault)
                {
                    Assert.Fail($"{purpose} of order {number} threw {fault}\n{changed.ToJsonString()}");
                }
            }
        }

        // Most orders can be read, some of them made: the test reaches behind the first rule.
        Assert.True(read > Orders / 2, $"{read} of {Orders} orders could be read.");
        Assert.True(sound > Orders / 50, $"{sound} orders were sound.");
    }

    private static JsonNode Changed(Random random)
    {
        JsonNode order = JsonNode.Parse(SampleOrder.Text)!;
        for (int changes = random.Next(1, 5); changes > 0; changes--)
        {
            FieldAnswer field = Fields[random.Next(Fields.Length)];
            Set(order, field.Pointer[1..].Split('/'), Value(field, random), random);
        }

        return order;
    }

    private static JsonNode? Value(FieldAnswer field, Random random) =>
        field.Choices is { Count: > 0 } choices && field.Type == FieldType.Choice && random.Next(6) > 0
            ? JsonValue.Create(choices[random.Next(choices.Count)])
            : JsonNode.Parse(random.Next(8) > 0 ? Pick([.. Odd.Where(odd => IsReadAs(field.Type, odd))], random) : Pick(Odd, random));

    private static string Pick(string[] texts, Random random) => texts.Length == 0 ? "null" : texts[random.Next(texts.Length)];

    // Whether the reader of JSON takes it for the field's type, whatever the rules will say.
    private static bool IsReadAs(FieldType type, string odd) =>
        odd == "null"
        || type switch
        {
            FieldType.Length => odd[0] is '"' or '-' or (>= '0' and <= '9'),
            FieldType.Number => odd is "0" or "-1" or "1" or "2" or "12" or "2147483647",
            FieldType.Text => odd[0] == '"',
            FieldType.Switch => odd is "true" or "false",
            FieldType.List => odd is "[]" or "[null]",
            FieldType.Group => odd is "{}",
            _ => false,
        };

    // Makes the records and entries on the way that are not there.
    private static void Set(JsonNode at, string[] steps, JsonNode? value, Random random)
    {
        for (int i = 0; ; i++)
        {
            bool last = i == steps.Length - 1;
            if (at is JsonArray list && steps[i] == "*")
            {
                int index = random.Next(Math.Max(list.Count, 1));
                if (index == list.Count)
                {
                    list.Add(new JsonObject());
                }

                if (last || list[index] is not (JsonObject or JsonArray))
                {
                    list[index] = last ? value : new JsonObject();
                }

                at = last ? at : list[index]!;
            }
            else if (at is JsonObject record && steps[i] != "*")
            {
                if (last || record[steps[i]] is not (JsonObject or JsonArray))
                {
                    record[steps[i]] =
                        last ? value
                        : steps[i + 1] == "*" ? new JsonArray()
                        : new JsonObject();
                }

                at = last ? at : record[steps[i]]!;
            }
            else
            {
                return;
            }

            if (last)
            {
                return;
            }
        }
    }
}
