using System.Collections;
using CushionService.Engine.Specifications;
using Google.Protobuf;
using Google.Protobuf.Reflection;
using Google.Type;

namespace CushionService.Grpc.Mapping;

/// <summary>Finds every value of a message that cannot be mapped, with its place as a JSON Pointer into the order: the
/// place that the same value has over REST. It runs only on a message in which the mapping has found an
/// error.</summary>
internal static class MessageDiagnosis
{
    /// <summary>The mapping errors of a message and of all messages in it, in the order of the fields.</summary>
    /// <param name="message">The message.</param>
    /// <param name="currency">The order's currency; empty when it names none.</param>
    /// <param name="pointer">The place of the message in the order.</param>
    public static IEnumerable<Violation> ErrorsOf(IMessage message, string currency, string pointer = "")
    {
        foreach (FieldDescriptor field in message.Descriptor.Fields.InDeclarationOrder())
        {
            string place = $"{pointer}/{field.JsonName}";
            object? value = field.Accessor.GetValue(message);
            IEnumerable<Violation> errors =
                field.IsRepeated && field.FieldType == FieldType.Message
                    ? ((IEnumerable)value!).Cast<IMessage>().SelectMany((element, index) => ErrorsOf(element, currency, $"{place}/{index}"))
                : field.IsRepeated && field.FieldType == FieldType.Enum
                    ? ((IEnumerable)value!)
                        .Cast<object>()
                        .SelectMany((element, index) => Unknown(field, element, $"{place}/{index}", least: 1))
                : field.IsRepeated && field.FieldType == FieldType.Double
                    ? ((IEnumerable)value!)
                        .Cast<object>()
                        .SelectMany((element, index) => Single(field, element, currency, $"{place}/{index}"))
                : Single(field, value, currency, place);
            foreach (Violation error in errors)
            {
                yield return error;
            }
        }
    }

    // The errors of a field that is not a list.
    private static IEnumerable<Violation> Single(FieldDescriptor field, object? value, string currency, string place) =>
        value switch
        {
            // A length or quantity that is not a number is reported by the rules, like one that is written in text.
            V1.Measure or V1.Quantity or null => [],
            Money money => Amounts.ErrorOf(money, currency) is { } error ? [new Violation(place, error.Code, error.Detail)] : [],
            IMessage inner => ErrorsOf(inner, currency, place),
            double number when !double.IsFinite(number) => [new Violation(place, "not-finite", MappingTexts.NotFinite)],
            Enum => Unknown(field, value, place, least: 0),
            _ => [],
        };

    // The number 0 means unspecified: a field is left out by it, but an entry of a list cannot be.
    private static IEnumerable<Violation> Unknown(FieldDescriptor field, object value, string place, int least) =>
        (int)value < least || field.EnumType.FindValueByNumber((int)value) is null
            ? [new Violation(place, "unknown-value", MappingTexts.UnknownNumber((int)value))]
            : [];
}
