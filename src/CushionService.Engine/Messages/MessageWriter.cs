using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Messages;

/// <summary>Puts messages into words: the last step before a person reads them.</summary>
/// <param name="language">The reader's language.</param>
/// <param name="unit">The order's unit of length; with inches go feet, pounds and pounds of force, else litres, kilograms and
/// newtons.</param>
/// <param name="spellsNames">Whether English, too, has parts and edges in words, as paper has them: boxing (panel 1), and not the answer's
/// boxing-1.</param>
public sealed class MessageWriter(Language language, LengthUnit unit, bool spellsNames = false)
{
    /// <summary>The text of a message.</summary>
    /// <param name="message">The message; its arguments may be messages, too.</param>
    /// <returns>In the reader's language, or in English where it has no translation.</returns>
    public string Text(Message message)
    {
        ImmutableArray<MessagePart> parts = message.Template.In(language);
        // Most messages are fixed words: they are not built anew.
        if (parts is [{ Form: PartForm.Text } only])
        {
            return only.Words;
        }

        var text = new StringBuilder();
        Write(text, message);
        return text.ToString();
    }

    /// <summary>A number or a measure as the language writes it, with its sign for decimals and its own word for a unit.</summary>
    /// <param name="measure">As English writes it: 15.5, 3 1/4 in.</param>
    public string Measure(string measure) => LanguageText.Number(language, measure);

    private void Write(StringBuilder text, Message message) =>
        Write(text, message.Template.In(language), message, message.Template.Written(language));

    // Numbers and words follow the language that the sentence is written in, which need not be the reader's.
    private void Write(StringBuilder text, ImmutableArray<MessagePart> parts, Message message, Language written)
    {
        foreach (MessagePart part in parts)
        {
            switch (part.Form)
            {
                case PartForm.Text:
                    text.Append(part.Words);
                    break;
                case PartForm.Value:
                    Write(text, message.Arguments[part.Argument], part.Conjunction, written);
                    break;
                case PartForm.Plural:
                    Write(text, Case(part, (long)message.Arguments[part.Argument].Number, written), message, written);
                    break;
                default:
                    Write(text, Case(part, KeyOf(message.Arguments[part.Argument])), message, written);
                    break;
            }
        }
    }

    private void Write(StringBuilder text, in MessageArgument argument, Conjunction conjunction, Language written)
    {
        switch (argument.Kind)
        {
            case ArgumentKind.Message:
                Write(text, (Message)argument.Value!);
                break;
            case ArgumentKind.List:
                ImmutableArray<MessageArgument> values = ((ArgumentList)argument.Value!).Values;
                for (var i = 0; i < values.Length; i++)
                {
                    text.Append(
                        i == 0 ? ""
                        : i == values.Length - 1 ? LanguageText.BeforeLast(written, conjunction)
                        : LanguageText.Between(written, conjunction)
                    );
                    int start = text.Length;
                    // Each value is mended once it is written: the sound that it begins with decides on the word
                    // before.
                    Write(text, values[i], Conjunction.None, written);
                    Euphony.Mend(text, start, written);
                }

                break;
            case ArgumentKind.Name when argument.Value is INamed named && (spellsNames || written != Language.English || named.HasGiven):
                Write(text, named.ToMessage());
                break;
            case ArgumentKind.Name or ArgumentKind.Word or ArgumentKind.Id or ArgumentKind.Item or ArgumentKind.Field:
                int word = text.Length;
                text.Append(Words(argument, written));
                Euphony.Mend(text, word, written);
                break;
            default:
                int measure = text.Length;
                text.Append(LanguageText.Number(written, Measure(argument)));
                Euphony.Mend(text, measure, written);
                break;
        }
    }

    private string Words(in MessageArgument argument, Language written) =>
        argument.Value switch
        {
            ContractWord word => Vocabulary.Of(word, written),
            EdgeName edge => Vocabulary.Of(edge, written, spellsNames),
            string words when argument.Kind == ArgumentKind.Field => Isolates.Of(FieldText.In(written, words)),
            string item when argument.Kind == ArgumentKind.Item => Isolates.Of(Vocabulary.OfItem(item, written)),
            string id => Isolates.Of(id),
            { } other => other.ToString()!,
            null => "",
        };

    private string Measure(in MessageArgument argument) =>
        argument.Kind switch
        {
            ArgumentKind.Length => LengthText.Format(Length.FromNanometres((long)argument.Number), unit),
            ArgumentKind.Mark => LengthText.FormatMark(Length.FromNanometres((long)argument.Number), unit),
            ArgumentKind.Run => LengthText.Format(
                Length.FromNanometres((long)argument.Number),
                unit == LengthUnit.Inch ? LengthUnit.Yard : LengthUnit.Metre
            ),
            ArgumentKind.Area => AmountText.Area(argument.Number, unit),
            ArgumentKind.Volume => AmountText.Volume(new Volume(argument.Number), unit),
            ArgumentKind.Mass => AmountText.Weight(new Mass(argument.Number), unit),
            ArgumentKind.Force => AmountText.Firmness(new Force(argument.Number), unit),
            ArgumentKind.Money => Exact(new Money(argument.Number, new Currency((string)argument.Value!))),
            ArgumentKind.Sale => argument.Value!.ToString()!,
            ArgumentKind.Percent => $"{Decimal(argument.Number)} %",
            ArgumentKind.Number => Decimal(argument.Number),
            ArgumentKind.Count => argument.Number.ToString("0", CultureInfo.InvariantCulture),
            _ => throw new InvalidOperationException($"An argument of kind {argument.Kind} cannot be written."),
        };

    // At least the decimals of a coin, for a price of one may be finer: as fine as the contract lets it be.
    private static string Exact(Money money) =>
        money == money.RoundHalfUp() ? money.ToString() : money.Amount.ToString("0.######", CultureInfo.InvariantCulture);

    private static string Decimal(decimal number) => number.ToString("0.####", CultureInfo.InvariantCulture);

    // The key of a case: a contract's word by its text, a flag, or whether there is anything at all.
    private static string KeyOf(in MessageArgument argument) =>
        argument.Kind switch
        {
            ArgumentKind.None => MessageCase.AbsentKey,
            ArgumentKind.Flag => argument.Number == 0 ? "false" : "true",
            ArgumentKind.Word => ((ContractWord)argument.Value!).Text,
            ArgumentKind.List when ((ArgumentList)argument.Value!).Values.IsEmpty => MessageCase.AbsentKey,
            _ => MessageCase.OtherKey,
        };

    // An exact number goes before the language's categories, as in ICU's MessageFormat.
    private static ImmutableArray<MessagePart> Case(MessagePart part, long count, Language written)
    {
        string category = PluralRules.Of(written, count) switch
        {
            PluralCategory.One => "one",
            PluralCategory.Many => "many",
            _ => MessageCase.OtherKey,
        };
        foreach (MessageCase exact in part.Cases)
        {
            if (exact.Key[0] == '=' && long.Parse(exact.Key.AsSpan(1), CultureInfo.InvariantCulture) == count)
            {
                return exact.Parts;
            }
        }

        return Case(part, category);
    }

    // The generator of messages lets no choice through that has no case for all others.
    private static ImmutableArray<MessagePart> Case(MessagePart part, string key)
    {
        MessageCase? other = null;
        foreach (MessageCase one in part.Cases)
        {
            if (one.Key == key)
            {
                return one.Parts;
            }

            other = one.Key == MessageCase.OtherKey ? one : other;
        }

        return other!.Parts;
    }
}
