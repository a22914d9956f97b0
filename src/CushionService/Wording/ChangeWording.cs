using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Text.Json;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Quoting;

namespace CushionService.Wording;

/// <summary>Says in one line what an option changes against the order as given: what is other about the fabric, and what that
/// does.</summary>
internal static class ChangeWording
{
    /// <summary>The line.</summary>
    /// <param name="given">The fabric as given.</param>
    /// <param name="option">The fabric in its place.</param>
    /// <param name="separate">Whether every cushion is cut from a length of its own.</param>
    /// <param name="asGiven">What the order as given takes; null where it cannot be made.</param>
    /// <param name="tried">What it takes with the option; null where it cannot be made.</param>
    public static Message Of(Fabric given, Fabric option, bool separate, Alternative? asGiven, Alternative? tried)
    {
        Message[] differences = [.. Differences(given, option, null), .. separate ? [ChangeTexts.Separate] : Array.Empty<Message>()];
        return ChangeTexts.Differences(
            differences.Length == 0 ? [ChangeTexts.SameFabric] : differences,
            tried is null ? ChangeTexts.Cannot
                : asGiven is null ? ChangeTexts.Can(Lengths(tried))
                : Instead(asGiven, tried)
        );
    }

    // What is cut from several lengths of a fabric is said as one length of it.
    private static IEnumerable<Message> Lengths(Alternative alternative) =>
        alternative
            .Quotes.SelectMany(quote => quote.Yardages)
            .GroupBy(yardage => (yardage.Layout.Fabric.Name, yardage.Layout.Fabric.Sold.Unit))
            .Select(fabric =>
                ChangeTexts.LengthOf(
                    new SaleAmount(fabric.Aggregate(Fraction.Of(0, 1), (sum, yardage) => sum + yardage.SoldAmount.Units), fabric.Key.Unit),
                    fabric.Key.Name
                )
            );

    // The difference in cost is said only where both are priced whole: with something unpriced it would mislead.
    private static Message Instead(Alternative asGiven, Alternative tried)
    {
        Money? more = null;
        if (asGiven.IsPriced && tried.IsPriced && tried.Total is { } total)
        {
            more = total with { Amount = total.Amount - asGiven.Total!.Value.Amount };
        }

        return ChangeTexts.Instead(
            Lengths(tried),
            Lengths(asGiven),
            same: more is { Amount: 0 },
            more is { Amount: > 0 } ? more : null,
            more is { Amount: < 0 } less ? less with { Amount = -less.Amount } : null,
            more?.Currency.Code ?? ""
        );
    }

    // By reflection over the contract's record, so that a field that is added later is compared without a line here.
    private static IEnumerable<Message> Differences(object? given, object? option, Message? outer)
    {
        foreach (PropertyInfo property in (given ?? option)!.GetType().GetProperties())
        {
            (object? before, object? after) = (ValueOf(property, given), ValueOf(property, option));
            // Names of a fabric, and what is on hand of it, are no part of what is proposed.
            if (
                property.Name is "Id" or "Item" or "Label" or "OnHand"
                || Equals(before, after)
                || Text(before) == Text(after)
                || IsSameLength(before, after)
            )
            {
                continue;
            }

            string words = JsonNamingPolicy.SnakeCaseLower.ConvertName(property.Name).Replace('_', ' ');
            Message field = outer is null ? ChangeTexts.Field(words) : ChangeTexts.FieldOf(outer, words);
            if (
                (before ?? after)!.GetType() is { IsClass: true } type
                && type != typeof(string)
                && !typeof(IEnumerable).IsAssignableFrom(type)
            )
            {
                foreach (Message inner in Differences(before, after, field))
                {
                    yield return inner;
                }
            }
            else
            {
                yield return ChangeTexts.Difference(field, Text(after), Text(before));
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
    private static Message Plain(string text) =>
        decimal.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out decimal number)
            ? ChangeTexts.Number(number)
            : ChangeTexts.Text(text);

    private static Message Text(object? value) =>
        value switch
        {
            null or false or 0d => ChangeTexts.None,
            Enum choice when Convert.ToInt32(choice, CultureInfo.InvariantCulture) == 0 => ChangeTexts.None,
            IReadOnlyList<PriceBreak> breaks => breaks.Count == 0
                ? ChangeTexts.None
                : ChangeTexts.Breaks(breaks.Select(step => ChangeTexts.Break(step.Amount ?? "", step.From?.Text ?? ""))),
            Measure measure when measure.TryRead(LengthUnit.Inch, out Length length) && length == Length.Zero => ChangeTexts.None,
            Measure measure => Plain(measure.Text),
            string text => Plain(text),
            Enum choice => Word(JsonNamingPolicy.KebabCaseLower.ConvertName(choice.ToString())),
            bool => ChangeTexts.Yes,
            _ => Plain(Convert.ToString(value, CultureInfo.InvariantCulture)!),
        };

    private static Message Word(string word) => ChangeTexts.Find(word) ?? ChangeTexts.Text(word);
}
