using CushionService.Engine.Measures;
using CushionService.Specifying;
using FluentValidation;
using FluentValidation.Results;

namespace CushionService.Validation;

/// <summary>What our rules need of a FluentValidation context: the order's reading, and findings with a code and a range.</summary>
internal static class RuleContext
{
    private const string ReadingKey = "reading";

    public static ValidationContext<T> For<T>(T instance, OrderReading reading)
    {
        var context = new ValidationContext<T>(instance);
        context.RootContextData[ReadingKey] = reading;
        return context;
    }

    public static OrderReading Reading<T>(this ValidationContext<T> context) => (OrderReading)context.RootContextData[ReadingKey];

    /// <summary>Reports a broken rule at a field below the one that is being checked.</summary>
    public static void Refuse<T>(this ValidationContext<T> context, string field, string code, string detail, FindingRange? range = null) =>
        Report(context, field, code, detail, Severity.Error, range);

    /// <summary>Reports something unwise.</summary>
    public static void Warn<T>(this ValidationContext<T> context, string field, string code, string detail) =>
        Report(context, field, code, detail, Severity.Warning, null);

    /// <summary>Reports a length that is out of range.</summary>
    public static void RefuseRange<T>(this ValidationContext<T> context, string field, string code, string detail, Length? minimum, Length? maximum)
    {
        OrderReading reading = context.Reading();
        context.Refuse(field, code, detail, new FindingRange(
            minimum is { } low ? reading.Number(low) : null,
            maximum is { } high ? reading.Number(high) : null));
    }

    private static void Report<T>(ValidationContext<T> context, string field, string code, string detail, Severity severity, FindingRange? range)
    {
        string path = context.PropertyChain.ToString();
        string name = path.Length == 0 || field.Length == 0 ? path + field : $"{path}.{field}";
        context.AddFailure(new ValidationFailure(name, detail) { ErrorCode = code, Severity = severity, CustomState = range });
    }
}
