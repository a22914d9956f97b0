using System.Collections;
using System.ComponentModel.DataAnnotations;
using System.Linq.Expressions;
using System.Reflection;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Intake;
using FluentValidation;

namespace CushionService.LoadTests.Runs;

/// <summary>The form of a contract record as FluentValidation's documentation writes it: a rule for each field, a validator for each part.
/// The intake does not use it; <see cref="IntakeRun"/> measures what it would cost.</summary>
/// <typeparam name="T">The record.</typeparam>
internal sealed class AttributeValidator<T> : AbstractValidator<T>
{
    // A sale is read in its own unit.
    private static readonly LengthUnit Unit = typeof(T) == typeof(Sale) ? LengthUnit.Yard : LengthUnit.Inch;

    private static readonly MethodInfo RuleOf = typeof(AttributeValidator<T>).GetMethod(
        nameof(AddRule),
        BindingFlags.NonPublic | BindingFlags.Instance
    )!;

    public AttributeValidator()
    {
        foreach (PropertyInfo property in typeof(T).GetProperties())
        {
            RuleOf.MakeGenericMethod(property.PropertyType).Invoke(this, [property]);
        }
    }

    private void AddRule<TValue>(PropertyInfo property)
    {
        ParameterExpression record = Expression.Parameter(typeof(T), "record");
        var get = Expression.Lambda<Func<T, TValue>>(Expression.Property(record, property), record);
        if (property.IsDefined(typeof(RequiredAttribute)))
        {
            RuleFor(get).NotNull().WithErrorCode("required");
        }

        if (LengthLimits.Of(property)?.In(Unit) is var (minimum, maximum))
        {
            RuleFor(get)
                .Must(value =>
                    value is not Measure measure || (measure.TryRead(Unit, out Length length) && length >= minimum && length <= maximum)
                )
                .WithErrorCode("out-of-range");
        }
        else if (property.GetCustomAttribute<RegularExpressionAttribute>() is { } form)
        {
            RuleFor((Expression<Func<T, string?>>)(object)get).Matches(TextPattern.Of(form.Pattern)).WithErrorCode("bad-form");
        }
        else if (property.GetCustomAttribute<NumberRangeAttribute>() is { } range && typeof(TValue) != typeof(string))
        {
            RuleFor(get)
                .Must(value =>
                    value is null
                    || (value as ICollection)?.Count is { } count && count >= range.Minimum && count <= range.Maximum
                    || value is IConvertible number && number.ToDouble(null) is var read && read >= range.Minimum && read <= range.Maximum
                )
                .WithErrorCode("out-of-range");
        }

        AddPart(property.PropertyType, get);
    }

    private void AddPart<TValue>(Type type, Expression<Func<T, TValue>> get)
    {
        if (type.Namespace == typeof(Order).Namespace)
        {
            RuleFor(get).SetValidator((IValidator<TValue>)Activator.CreateInstance(typeof(AttributeValidator<>).MakeGenericType(type))!);
        }
        else if (type.IsGenericType && type.GetGenericArguments()[0] is { IsClass: true } entry && entry != typeof(string))
        {
            typeof(AttributeValidator<T>)
                .GetMethod(nameof(AddEntries), BindingFlags.NonPublic | BindingFlags.Instance)!
                .MakeGenericMethod(entry)
                .Invoke(this, [get]);
        }
    }

    private void AddEntries<TEntry>(LambdaExpression get)
    {
        var entries = Expression.Lambda<Func<T, IEnumerable<TEntry>>>(get.Body, get.Parameters);
        RuleForEach(entries).SetValidator(new AttributeValidator<TEntry>());
    }
}
