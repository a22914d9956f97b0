using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Text.Json;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;

namespace CushionService.Wording;

/// <summary>Says in one line what an option changes against the order as given: what is other about the fabric, and what that
/// does.</summary>
internal static class ChangeWording
{
    public static string Of(Fabric given, Fabric option, bool separate, Alternative? asGiven, Alternative? tried)
    {
        string[] differences =
        [
            .. Differences(given, option, ""),
            .. separate ? ["each cushion cut from a length of its own"] : Array.Empty<string>(),
        ];
        string what = differences.Length == 0 ? "the same fabric" : string.Join(", ", differences);
        return tried is null ? $"{what}: cannot be made"
            : asGiven is null ? $"{what}: can be made, {Lengths(tried)}"
            : $"{what}: {Lengths(tried)} instead of {Lengths(asGiven)}{Difference(asGiven, tried)}";
    }

    private static string Lengths(Alternative alternative) =>
        string.Join(
            " and ",
            alternative
                .Quotes.SelectMany(quote => quote.Yardages)
                .GroupBy(yardage => (yardage.Layout.Fabric.Name, yardage.Layout.Fabric.Sold.LengthUnit))
                .Select(fabric =>
                    $"{LengthText.Format(fabric.Aggregate(Length.Zero, (sum, yardage) => sum + yardage.Sold), fabric.Key.LengthUnit)} "
                    + $"of {fabric.Key.Name}"
                )
        );

    private static string Difference(Alternative asGiven, Alternative tried)
    {
        if (!asGiven.IsPriced || !tried.IsPriced)
        {
            return "";
        }

        Money total = tried.Total!.Value;
        decimal more = total.Amount - asGiven.Total!.Value.Amount;
        return more == 0
            ? ", the same total"
            : $", {total with { Amount = Math.Abs(more) }} {total.Currency.Code} {(more > 0 ? "more" : "less")}";
    }

    private static IEnumerable<string> Differences(object? given, object? option, string prefix)
    {
        foreach (PropertyInfo property in (given ?? option)!.GetType().GetProperties())
        {
            (object? before, object? after) = (ValueOf(property, given), ValueOf(property, option));
            string name = $"{prefix}{JsonNamingPolicy.SnakeCaseLower.ConvertName(property.Name).Replace('_', ' ')}";
            if (
                property.Name is "Id" or "Item" or "Label" or "OnHand"
                || Equals(before, after)
                || Text(before) == Text(after)
                || IsSameLength(before, after)
            )
            {
                continue;
            }

            if (
                (before ?? after)!.GetType() is { IsClass: true } type
                && type != typeof(string)
                && !typeof(IEnumerable).IsAssignableFrom(type)
            )
            {
                foreach (string inner in Differences(before, after, name + " "))
                {
                    yield return inner;
                }
            }
            else
            {
                yield return $"{name} {Text(after)} instead of {Text(before)}";
            }
        }
    }

    // The same length, however it is written.
    private static bool IsSameLength(object? before, object? after) =>
        before is Measure one
        && after is Measure other
        && one.TryRead(LengthUnit.Inch, out Length length)
        && other.TryRead(LengthUnit.Inch, out Length same)
        && length == same;

    // What is left out is what the contract says that it is then: the least that is sold is one step.
    private static object? ValueOf(PropertyInfo property, object? owner) =>
        owner is null ? null : property.GetValue(owner) ?? (owner is Sale sale && property.Name == nameof(Sale.Minimum) ? sale.Step : null);

    // A number reads the same however the door spells it.
    private static string Plain(string text) =>
        decimal.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out decimal number)
            ? number.ToString("0.##########", CultureInfo.InvariantCulture)
            : text;

    private static string Text(object? value) =>
        value switch
        {
            null or false or 0d => "none",
            Enum choice when Convert.ToInt32(choice, CultureInfo.InvariantCulture) == 0 => "none",
            IReadOnlyList<PriceBreak> breaks => breaks.Count == 0
                ? "none"
                : string.Join(" and ", breaks.Select(step => $"{step.Amount} from {step.From?.Text}")),
            Measure measure when measure.TryRead(LengthUnit.Inch, out Length length) && length == Length.Zero => "none",
            Measure measure => Plain(measure.Text),
            string text => Plain(text),
            Enum choice => JsonNamingPolicy.KebabCaseLower.ConvertName(choice.ToString()),
            bool truth => truth ? "yes" : "no",
            _ => Convert.ToString(value, CultureInfo.InvariantCulture)!,
        };
}
