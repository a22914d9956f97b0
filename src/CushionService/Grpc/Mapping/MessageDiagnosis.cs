using System.Collections;
using CushionService.Engine.Specifications;
using Google.Protobuf;
using Google.Protobuf.Reflection;
using Google.Type;

namespace CushionService.Grpc.Mapping;

/// <summary>Finds every value of a message that could not be read, with its place as a JSON Pointer into the order.</summary>
internal static class MessageDiagnosis
{
    /// <summary>The faults of a message and of all within it.</summary>
    public static IEnumerable<Violation> FaultsOf(IMessage message, string currency, string pointer = "")
    {
        foreach (FieldDescriptor field in message.Descriptor.Fields.InDeclarationOrder())
        {
            string place = $"{pointer}/{field.JsonName}";
            object? value = field.Accessor.GetValue(message);
            IEnumerable<Violation> faults =
                field.IsRepeated && field.FieldType == FieldType.Message
                    ? ((IEnumerable)value!).Cast<IMessage>().SelectMany((element, index) => FaultsOf(element, currency, $"{place}/{index}"))
                : field.IsRepeated && field.FieldType == FieldType.Enum
                    ? ((IEnumerable)value!)
                        .Cast<object>()
                        .SelectMany((element, index) => Unknown(field, element, $"{place}/{index}", least: 1))
                : Single(field, value, currency, place);
            foreach (Violation fault in faults)
            {
                yield return fault;
            }
        }
    }

    private static IEnumerable<Violation> Single(FieldDescriptor field, object? value, string currency, string place) =>
        value switch
        {
            // A length that is no number is told by the rules, as it is for one written in text.
            V1.Measure or null => [],
            Money money => Amounts.FaultOf(money, currency) is { } fault ? [new Violation(place, fault.Code, fault.Detail)] : [],
            IMessage inner => FaultsOf(inner, currency, place),
            double number when !double.IsFinite(number) => [new Violation(place, "not-finite", "The number must be finite.")],
            Enum => Unknown(field, value, place, least: 0),
            _ => [],
        };

    // A member that is not said is one that is left out; in a list it is nothing.
    private static IEnumerable<Violation> Unknown(FieldDescriptor field, object value, string place, int least) =>
        (int)value < least || field.EnumType.FindValueByNumber((int)value) is null
            ? [new Violation(place, "unknown-value", $"There is no value with the number {(int)value}.")]
            : [];
}
