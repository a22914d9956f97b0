using System.Linq.Expressions;
using System.Reflection;

namespace CushionService.Validation;

/// <summary>Compiled getters: reflection costs more than what is checked by it.</summary>
internal static class Getters
{
    /// <summary>Gets a property of a record.</summary>
    /// <typeparam name="T">The record.</typeparam>
    /// <typeparam name="TValue">What the property's value is got as.</typeparam>
    public static Func<T, TValue> Of<T, TValue>(PropertyInfo property)
    {
        ParameterExpression instance = Expression.Parameter(typeof(T));
        return Expression.Lambda<Func<T, TValue>>(Expression.Convert(Expression.Property(instance, property), typeof(TValue)), instance).Compile();
    }
}
