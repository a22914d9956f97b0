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
/// does. Lengths have the order's unit, and prices the decimals of its currency.</summary>
internal sealed class ChangeWording
{
    private readonly LengthUnit _unit;
    private readonly Currency? _currency;

    private ChangeWording(LengthUnit unit, Currency? currency) => (_unit, _currency) = (unit, currency);

    /// <summary>The line.</summary>
    /// <param name="unit">The unit of lengths that are written as a number.</param>
    /// <param name="currency">The currency of prices; null where nothing is priced.</param>
    /// <param name="given">The fabric as given.</param>
    /// <param name="option">The fabric in its place.</param>
    /// <param name="separate">Whether every cushion is cut from a length of its own.</param>
    /// <param name="asGiven">What the order as given takes; null where it cannot be made.</param>
    /// <param name="tried">What it takes with the option; null where it cannot be made.</param>
    public static Message Of(
        LengthUnit unit,
        Currency? currency,
        Fabric given,
        Fabric option,
        bool separate,
        Alternative? asGiven,
        Alternative? tried
    )
    {
        var wording = new ChangeWording(unit, currency);
        Message[] differences =
        [
            .. wording.Differences(given, option, null),
            .. separate ? [ChangeTexts.Separate] : Array.Empty<Message>(),
        ];
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
    private IEnumerable<Message> Differences(object? given, object? option, Message? outer)
    {
        foreach (PropertyInfo property in (given ?? option)!.GetType().GetProperties())
        {
            (object? before, object? after) = (ValueOf(property, given, option), ValueOf(property, option, given));
            // Names of a fabric, and what is on hand of it, are no part of what is proposed; what has no price has it by no unit.
            if (
                property.Name is "Id" or "Item" or "Label" or "OnHand"
                || (property.DeclaringType == typeof(Price) && property.Name == nameof(Price.Per) && (before is null || after is null))
                || Equals(before, after)
                || (IsNothing(before) && IsNothing(after))
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
                Message was = Text(property, before),
                    becomes = Text(property, after);
                if (was != becomes)
                {
                    yield return ChangeTexts.Difference(field, becomes, was);
                }
            }
        }
    }

    // The same length, however it is written.
    private bool IsSameLength(object? before, object? after) =>
        before is Measure one
        && after is Measure other
        && one.TryRead(_unit, out Length length)
        && other.TryRead(_unit, out Length same)
        && length == same;

    // What one of two leaves out is what the contract says that it is then: the least that is sold is one step, and a choice its first
    // word. What both leave out is no difference.
    private static object? ValueOf(PropertyInfo property, object? owner, object? other)
    {
        object? value = owner is null ? null : property.GetValue(owner);
        return value is not null || owner is null || other is null || property.GetValue(other) is null ? value
            : owner is Sale sale && property.Name == nameof(Sale.Minimum) ? sale.Step
            : Nullable.GetUnderlyingType(property.PropertyType) is { IsEnum: true } choice ? Enum.ToObject(choice, 0)
            : null;
    }

    // Yards are the first of their kind, and yet a unit that is given.
    private static bool IsNothing(object? value) =>
        value is null or false or 0d
        || (value is Enum choice and not SaleUnit && Convert.ToInt32(choice, CultureInfo.InvariantCulture) == 0)
        || (value is IReadOnlyList<PriceBreak> breaks && breaks.Count == 0)
        || (value is Measure measure && measure.TryRead(LengthUnit.Inch, out Length length) && length == Length.Zero);

    // A number reads the same however the door spells it.
    private static Message Plain(string text) =>
        decimal.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out decimal number)
            ? ChangeTexts.Number(number)
            : ChangeTexts.Text(text);

    // As the total is written, so that a price of 18.90 is not one of 18.9.
    private Message PriceText(string amount) =>
        _currency is { } currency && decimal.TryParse(amount, NumberStyles.Float, CultureInfo.InvariantCulture, out decimal number)
            ? ChangeTexts.Money(new Money(number, currency))
            : Plain(amount);

    // How a shop sells is written in its own unit of sale, all other lengths in the order's.
    private Message Text(PropertyInfo property, object? value) =>
        value switch
        {
            _ when value is not Enum && IsNothing(value) => ChangeTexts.None,
            IReadOnlyList<PriceBreak> breaks => ChangeTexts.Breaks(
                breaks.Select(step => ChangeTexts.Break(PriceText(step.Amount ?? ""), step.From?.Text ?? ""))
            ),
            Measure measure => property.DeclaringType != typeof(Sale) && measure.TryRead(_unit, out Length length)
                ? ChangeTexts.Length(length)
                : Plain(measure.Text),
            string text => property.DeclaringType == typeof(Price) ? PriceText(text) : ChangeTexts.Text(text),
            Enum choice => Word(JsonNamingPolicy.KebabCaseLower.ConvertName(choice.ToString())),
            bool => ChangeTexts.Yes,
            _ => Plain(Convert.ToString(value, CultureInfo.InvariantCulture)!),
        };

    private static Message Word(string word) => ChangeTexts.Find(word) ?? ChangeTexts.Text(word);
}
