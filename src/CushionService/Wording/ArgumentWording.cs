using System.Text.Json.Nodes;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;

namespace CushionService.Wording;

/// <summary>The values of a message as JSON, for programs that write sentences of their own.</summary>
internal static class ArgumentWording
{
    // A measure that geometry gives has more digits than anyone needs.
    private const int Digits = 6;

    /// <summary>The arguments by name; what is absent is left out.</summary>
    /// <param name="message">The message.</param>
    /// <param name="unit">The order's unit of length; with inches go cubic feet, pounds and pounds of force, else litres, kilograms and
    /// newtons.</param>
    /// <returns>Text for names, words and money; numbers for measures, in the units above; objects for messages within
    /// the message.</returns>
    public static JsonObject Of(Message message, LengthUnit unit)
    {
        JsonObject values = [];
        for (int i = 0; i < message.Arguments.Length; i++)
        {
            if (message.Arguments[i].Kind != ArgumentKind.None)
            {
                values.Add(message.Template.Names[i], Value(message.Arguments[i], unit));
            }
        }

        return values;
    }

    private static JsonNode? Value(in MessageArgument argument, LengthUnit unit)
    {
        switch (argument.Kind)
        {
            case ArgumentKind.Flag:
                return argument.Number != 0;
            case ArgumentKind.Money:
                return new Money(argument.Number, new Currency((string)argument.Value!)).ToString();
            case ArgumentKind.Sale:
                SaleAmount sold = (SaleAmount)argument.Value!;
                return new JsonObject
                {
                    ["amount"] = Number((decimal)sold.Units.Numerator / (decimal)sold.Units.Denominator),
                    ["unit"] = System.Text.Json.JsonNamingPolicy.KebabCaseLower.ConvertName(sold.Unit.ToString()),
                };
            case ArgumentKind.Message:
                Message inner = (Message)argument.Value!;
                return new JsonObject { ["key"] = inner.Key, ["arguments"] = Of(inner, unit) };
            case ArgumentKind.List:
                JsonArray list = [];
                foreach (MessageArgument value in ((ArgumentList)argument.Value!).Values)
                {
                    list.Add(Value(value, unit));
                }

                return list;
            case ArgumentKind.Name or ArgumentKind.Word or ArgumentKind.Id or ArgumentKind.Item or ArgumentKind.Field:
                return argument.Value!.ToString();
            default:
                return Number(Measure(argument, unit));
        }
    }

    private static decimal Measure(in MessageArgument argument, LengthUnit unit)
    {
        bool imperial = unit == LengthUnit.Inch;
        decimal side = Length.From(1, unit).In(LengthUnit.Millimetre);
        return argument.Kind switch
        {
            ArgumentKind.Length or ArgumentKind.Mark or ArgumentKind.Run => Length.FromNanometres((long)argument.Number).In(unit),
            ArgumentKind.Area => argument.Number / (side * side),
            ArgumentKind.Volume => imperial ? new Volume(argument.Number).CubicFeet : argument.Number / 1_000_000,
            ArgumentKind.Mass => imperial ? new Mass(argument.Number).Pounds : new Mass(argument.Number).Kilograms,
            ArgumentKind.Force => imperial ? new Force(argument.Number).Pounds : argument.Number,
            _ => argument.Number,
        };
    }

    // Rounded before it is a double, so that no answer shows 0.30000000000000004.
    private static double Number(decimal number) => (double)decimal.Round(number, Digits);
}
