using FluentValidation;

namespace CushionService.Validation;

/// <summary>A validator put together from rules that look at a record and report to its context.</summary>
/// <remarks>All of a record's rules are one rule to FluentValidation, and a part's are run within its whole's: each rule of the library's own costs more than
/// most of what we check.</remarks>
internal abstract class RecordValidator<T> : AbstractValidator<T>
{
    private readonly Action<T, ValidationContext<T>>[] _rules;

    /// <summary>A validator of rules, which are run in their order.</summary>
    protected RecordValidator(params Action<T, ValidationContext<T>>[] rules)
    {
        _rules = rules;
        RuleFor(instance => instance).Custom(Run);
    }

    /// <summary>Runs the rules within a check that has begun.</summary>
    public void Run(T instance, ValidationContext<T> context)
    {
        foreach (Action<T, ValidationContext<T>> rule in _rules)
        {
            rule(instance, context);
        }
    }
}
