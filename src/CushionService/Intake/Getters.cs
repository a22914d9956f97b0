using System.Linq.Expressions;
using System.Reflection;

namespace CushionService.Intake;

/// <summary>Compiled getters: reflection costs more than what is checked by it.</summary>
internal static class Getters
{
    /// <summary>Gets a property of a record.</summary>
    /// <typeparam name="T">The record.</typeparam>
    /// <typeparam name="TValue">What the property's value is got as.</typeparam>
    /// <param name="property">The property, of the record's own type.</param>
    /// <returns>What gets its value, boxed where <typeparamref name="TValue"/> is an object.</returns>
    public static Func<T, TValue> Of<T, TValue>(PropertyInfo property)
    {
        ParameterExpression instance = Expression.Parameter(typeof(T));
        return Expression
            .Lambda<Func<T, TValue>>(Expression.Convert(Expression.Property(instance, property), typeof(TValue)), instance)
            .Compile();
    }

    /// <summary>Tells which of a record's properties are not null: the first by the lowest bit.</summary>
    /// <typeparam name="T">The record.</typeparam>
    /// <param name="properties">At most 64 properties.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are more.</exception>
    public static Func<T, ulong> Given<T>(IReadOnlyList<PropertyInfo> properties)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(properties.Count, 64, nameof(properties));
        ParameterExpression instance = Expression.Parameter(typeof(T));
        Expression given = Expression.Constant(0UL);
        foreach ((int at, PropertyInfo property) in properties.Index())
        {
            Expression value = Expression.Property(instance, property);
            Expression isGiven =
                !value.Type.IsValueType ? Expression.ReferenceNotEqual(value, Expression.Constant(null))
                : Nullable.GetUnderlyingType(value.Type) is null ? Expression.Constant(true)
                : Expression.Property(value, nameof(Nullable<>.HasValue));
            given = Expression.Or(given, Expression.Condition(isGiven, Expression.Constant(1UL << at), Expression.Constant(0UL)));
        }

        return Expression.Lambda<Func<T, ulong>>(given, instance).Compile();
    }
}
