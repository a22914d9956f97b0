namespace CushionService.Grpc.Mapping;

/// <summary>Numbers and lengths of messages, as the contract has them.</summary>
internal static class Numbers
{
    /// <summary>The number; null, which is a doubt, when it is infinite or not a number.</summary>
    public static double? Read(double number, MappingErrors errors)
    {
        bool finite = double.IsFinite(number);
        errors.Any |= !finite;
        return finite ? number : null;
    }

    /// <summary>The length as it is written; an empty text when the message holds neither number nor text.</summary>
    public static Contract.Measure? Read(V1.Measure? measure) =>
        measure switch
        {
            null => null,
            { HasNumber: true } => Contract.Measure.Of(measure.Number),
            _ => Contract.Measure.Of(measure.Text),
        };
}
