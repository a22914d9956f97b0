using System.Linq.Expressions;
using System.Reflection;

namespace CushionService.Validation;

/// <summary>Compiled getters: reflection costs more than what is checked by it.</summary>
internal static class Getters
{
    /// <summary>Gets a property of a record.</summary>
    public static Func<T, object?> Of<T>(PropertyInfo property)
    {
        ParameterExpression instance = Expression.Parameter(typeof(T));
        return Expression.Lambda<Func<T, object?>>(Expression.Convert(Expression.Property(instance, property), typeof(object)), instance).Compile();
    }
}
