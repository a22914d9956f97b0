namespace CushionService.Grpc.Mapping;

/// <summary>Numbers and lengths of messages, as the contract has them.</summary>
internal static class Numbers
{
    /// <summary>The number; null, which is a doubt, when it is infinite or not a number.</summary>
    public static double? Read(double number, Doubts doubts)
    {
        bool finite = double.IsFinite(number);
        doubts.Any |= !finite;
        return finite ? number : null;
    }

    /// <summary>The number as a decimal; beyond what a decimal can hold, its largest.</summary>
    public static decimal? ReadDecimal(double number, Doubts doubts) =>
        Read(number, doubts) is not { } finite ? null
        : finite >= (double)decimal.MaxValue ? decimal.MaxValue
        : finite <= (double)decimal.MinValue ? decimal.MinValue
        : (decimal)finite;

    /// <summary>The length as it is written; an empty text when the message holds neither number nor text.</summary>
    public static Contract.Measure? Read(V1.Measure? measure) => measure switch
    {
        null => null,
        { HasNumber: true } => Contract.Measure.Of(measure.Number),
        _ => Contract.Measure.Of(measure.Text),
    };
}
