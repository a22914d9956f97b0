using Google.Protobuf.Collections;

namespace CushionService.Grpc.Mapping;

/// <summary>Maps numbers and lengths of messages to the contract's.</summary>
internal static class Numbers
{
    /// <summary>The number.</summary>
    /// <param name="number">The number of the message, which may be infinite or not a number: JSON cannot say that, and
    /// protobuf can.</param>
    /// <param name="errors">Notes a number that is not finite.</param>
    /// <returns>The number; null when it is not finite.</returns>
    public static double? Read(double number, MappingErrors errors)
    {
        bool finite = double.IsFinite(number);
        errors.Any |= !finite;
        return finite ? number : null;
    }

    /// <summary>The numbers of a list, without those that are not finite; null for an empty list, since a message cannot tell an empty list
    /// from a missing one.</summary>
    /// <param name="numbers">The list.</param>
    /// <param name="errors">Notes a number that is not finite; the diagnosis says which.</param>
    public static IReadOnlyList<double>? ReadAll(RepeatedField<double> numbers, MappingErrors errors) =>
        numbers.Count == 0 ? null : [.. numbers.Select(number => Read(number, errors)).OfType<double>()];

    /// <summary>The texts of a list; null for an empty list.</summary>
    public static IReadOnlyList<string>? ReadAll(RepeatedField<string> texts, MappingErrors errors) => texts.Count == 0 ? null : [.. texts];

    /// <summary>The lengths of a list as they were sent; null for an empty list.</summary>
    public static IReadOnlyList<Contract.Measure>? ReadAll(RepeatedField<V1.Measure> measures) =>
        measures.Count == 0 ? null : [.. measures.Select(measure => Read(measure)!.Value)];

    /// <summary>The length as it was sent, in the order's unit or with a unit of its own. An empty text, which the
    /// rules refuse, when the message has neither number nor text; null when the field is not set.</summary>
    /// <param name="measure">The length of the message.</param>
    public static Contract.Measure? Read(V1.Measure? measure) =>
        measure switch
        {
            null => null,
            { HasNumber: true } => Contract.Measure.Of(measure.Number),
            _ => Contract.Measure.Of(measure.Text),
        };

    /// <summary>The quantity as it was sent. An empty text, which the rules refuse, when the message has neither number nor text; null when
    /// the field is not set.</summary>
    /// <param name="quantity">The quantity of the message.</param>
    public static Contract.Quantity? Read(V1.Quantity? quantity) =>
        quantity switch
        {
            null => null,
            { HasNumber: true } => Contract.Quantity.Of(quantity.Number),
            _ => Contract.Quantity.Of(quantity.Text),
        };
}
