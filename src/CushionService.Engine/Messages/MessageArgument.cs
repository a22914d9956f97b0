using System.Text.Json;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Messages;

/// <summary>A value in a message, without unit or language. Two are equal when they are of one kind and value.</summary>
/// <remarks>A measure is held as a number, so that it needs no object of its own.</remarks>
public readonly record struct MessageArgument
{
    private readonly object? _value;
    private readonly decimal _number;

    private MessageArgument(ArgumentKind kind, decimal number, object? value = null) => (Kind, _number, _value) = (kind, number, value);

    /// <summary>What it is; <see cref="ArgumentKind.None"/> for the default.</summary>
    public ArgumentKind Kind { get; }

    /// <summary>Nanometres, square or cubic millimetres, grams, newtons, currency units, hundredths, or the number itself; 1 for a flag
    /// that is set, else 0.</summary>
    public decimal Number => _number;

    /// <summary>The currency's code, the sale's amount, the name, word, id, item or field, the message, or the list; null for what is a
    /// number alone.</summary>
    public object? Value => _value;

    /// <summary>A length.</summary>
    public static MessageArgument Of(Length length) => new(ArgumentKind.Length, length.Nanometres);

    /// <summary>A distance to a mark.</summary>
    public static MessageArgument Mark(Length length) => new(ArgumentKind.Mark, length.Nanometres);

    /// <summary>A length as it comes off a roll or a spool.</summary>
    public static MessageArgument Run(Length length) => new(ArgumentKind.Run, length.Nanometres);

    /// <summary>An area.</summary>
    public static MessageArgument Of(Area area) => new(ArgumentKind.Area, area.SquareMillimetres);

    /// <summary>A volume.</summary>
    public static MessageArgument Of(Volume volume) => new(ArgumentKind.Volume, volume.CubicMillimetres);

    /// <summary>A mass.</summary>
    public static MessageArgument Of(Mass mass) => new(ArgumentKind.Mass, mass.Grams);

    /// <summary>A force.</summary>
    public static MessageArgument Of(Force force) => new(ArgumentKind.Force, force.Newtons);

    /// <summary>An amount of money.</summary>
    public static MessageArgument Of(Money money) => new(ArgumentKind.Money, money.Amount, money.Currency.Code);

    /// <summary>An amount in a unit of sale.</summary>
    public static MessageArgument Of(SaleAmount amount) => new(ArgumentKind.Sale, 0, amount);

    /// <summary>A share: 1/20 is 5 %.</summary>
    public static MessageArgument Percent(Fraction share) =>
        new(ArgumentKind.Percent, 100m * (decimal)share.Numerator / (decimal)share.Denominator);

    /// <summary>A number.</summary>
    public static MessageArgument Of(decimal number) => new(ArgumentKind.Number, number);

    /// <summary>A whole number.</summary>
    public static MessageArgument Of(long count) => new(ArgumentKind.Count, count);

    /// <summary>Yes or no.</summary>
    public static MessageArgument Of(bool flag) => new(ArgumentKind.Flag, flag ? 1 : 0);

    /// <summary>The name of a part or an edge; its text is made when the message is written.</summary>
    public static MessageArgument Name<TName>(TName name)
        where TName : struct, IEquatable<TName> => new(ArgumentKind.Name, 0, name);

    /// <summary>A member of an enumeration, as the contract spells it.</summary>
    public static MessageArgument Word<TWord>(TWord word)
        where TWord : struct, Enum => new(ArgumentKind.Word, 0, WordsOf<TWord>.Of(word));

    /// <summary>A name of C# in kebab case.</summary>
    internal static string Kebab(string name) => JsonNamingPolicy.KebabCaseLower.ConvertName(name);

    /// <summary>What the caller gave.</summary>
    public static MessageArgument Id(string text) => new(ArgumentKind.Id, 0, text);

    /// <summary>What is bought, by the name that prices have.</summary>
    public static MessageArgument Item(string text) => new(ArgumentKind.Item, 0, text);

    /// <summary>A field, in words.</summary>
    public static MessageArgument Field(string words) => new(ArgumentKind.Field, 0, words);

    /// <summary>A message.</summary>
    public static MessageArgument Of(Message message) => new(ArgumentKind.Message, 0, message);

    /// <summary>A list.</summary>
    /// <param name="values">The values.</param>
    /// <param name="argument">What makes an argument of each.</param>
    public static MessageArgument List<TValue>(IEnumerable<TValue> values, Func<TValue, MessageArgument> argument) =>
        new(ArgumentKind.List, 0, new ArgumentList([.. values.Select(argument)]));

    private static class WordsOf<TWord>
        where TWord : struct, Enum
    {
        private static readonly Dictionary<TWord, ContractWord> Words = Enum.GetValues<TWord>().Distinct().ToDictionary(word => word, Make);

        public static ContractWord Of(TWord word) => Words.TryGetValue(word, out ContractWord? known) ? known : Make(word);

        private static ContractWord Make(TWord word) =>
            new(Kebab(word.ToString()), $"{Kebab(typeof(TWord).Name)}-{Kebab(word.ToString())}");
    }
}
