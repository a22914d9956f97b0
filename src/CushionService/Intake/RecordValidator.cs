using FluentValidation;
using FluentValidation.Results;

namespace CushionService.Intake;

/// <summary>A validator put together from rules that look at a record and report what they find.</summary>
/// <remarks>All of a record's rules are one rule to FluentValidation, and a part's are run within its whole's: each rule and each context of the library's own
/// costs more than most of what we check.</remarks>
internal abstract class RecordValidator<T> : AbstractValidator<T>
{
    private readonly Action<T, Findings>[] _rules;

    /// <summary>A validator of rules, which are run in their order.</summary>
    protected RecordValidator(params Action<T, Findings>[] rules)
    {
        _rules = rules;
        RuleFor(instance => instance)
            .Custom((instance, context) => Run(instance, new Findings(((ReadingContext)context).Reading, context.AddFailure)));
    }

    /// <summary>Checks a record.</summary>
    /// <param name="instance">The record.</param>
    /// <param name="reading">How its order is read.</param>
    public ValidationResult Check(T instance, OrderReading reading) => Validate(new ReadingContext(instance, reading));

    /// <summary>Runs the rules within a check that has begun.</summary>
    public void Run(T instance, Findings findings)
    {
        foreach (Action<T, Findings> rule in _rules)
        {
            rule(instance, findings);
        }
    }

    private sealed class ReadingContext(T instance, OrderReading reading) : ValidationContext<T>(instance)
    {
        public OrderReading Reading => reading;
    }
}
