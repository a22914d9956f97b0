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

    /// <summary>The length as it was sent, in the order's unit or with a unit of its own. An empty text, which the
    /// rules refuse, when the message has neither number nor text; null when the field is not set.</summary>
    public static Contract.Measure? Read(V1.Measure? measure) =>
        measure switch
        {
            null => null,
            { HasNumber: true } => Contract.Measure.Of(measure.Number),
            _ => Contract.Measure.Of(measure.Text),
        };
}
