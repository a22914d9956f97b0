using System.Linq.Expressions;
using System.Reflection;
using CushionService.Contract;
using CushionService.Json;
using Google.Protobuf;
using Google.Protobuf.Collections;
using Google.Protobuf.Reflection;

namespace CushionService.Grpc.Mapping;

/// <summary>Maps a message to the record of the contract, member by member of the same name. The mapping is compiled
/// once for each type, from the descriptions of both sides: a new field needs no code here.</summary>
/// <typeparam name="TWire">The message.</typeparam>
/// <typeparam name="TContract">The record.</typeparam>
internal static class MessageReader<TWire, TContract>
    where TWire : IMessage<TWire>, new()
{
    private static readonly Func<TWire, MappingErrors, TContract> Compiled = Compile();

    /// <summary>The record of a message.</summary>
    /// <param name="message">The message.</param>
    /// <param name="errors">Notes that a value could not be mapped; the value is left out.</param>
    public static TContract Read(TWire message, MappingErrors errors) => Compiled(message, errors);

    /// <summary>The records of a list of messages; null for an empty list, since a message cannot tell an empty list
    /// from a missing one.</summary>
    /// <param name="messages">The list.</param>
    /// <param name="errors">Notes that a value could not be mapped.</param>
    public static IReadOnlyList<TContract>? ReadAll(RepeatedField<TWire> messages, MappingErrors errors)
    {
        if (messages.Count == 0)
        {
            return null;
        }

        TContract[] records = new TContract[messages.Count];
        for (int i = 0; i < records.Length; i++)
        {
            records[i] = Compiled(messages[i], errors);
        }

        return records;
    }

    // new TContract { Member = value, ... }: one assignment for each field.
    private static Func<TWire, MappingErrors, TContract> Compile()
    {
        ParameterExpression message = Expression.Parameter(typeof(TWire));
        ParameterExpression errors = Expression.Parameter(typeof(MappingErrors));
        IEnumerable<MemberAssignment> members = Members
            .Pair(new TWire().Descriptor, typeof(TContract))
            .Select(pair => Expression.Bind(pair.Member, Value(message, errors, pair.Field, pair.Member)));
        return Expression
            .Lambda<Func<TWire, MappingErrors, TContract>>(
                Expression.MemberInit(Expression.New(typeof(TContract)), members),
                message,
                errors
            )
            .Compile();
    }

    // The value of a field, by its kind: an amount, a length, messages, words, or a value that both sides have.
    private static Expression Value(Expression message, Expression errors, FieldDescriptor field, PropertyInfo member)
    {
        Expression value = Entries(Expression.Property(message, field.PropertyName), field, member);
        Type type = member.PropertyType;
        if (field.FieldType == FieldType.Message)
        {
            return type == typeof(string) ? Call(typeof(Amounts), nameof(Amounts.Read), value, errors)
                : type == typeof(Contract.Measure?) || type == typeof(Contract.Quantity?)
                    ? Call(typeof(Numbers), nameof(Numbers.Read), value)
                : type == typeof(IReadOnlyList<Contract.Measure>) ? Call(typeof(Numbers), nameof(Numbers.ReadAll), value)
                : field.IsRepeated ? Call(ReaderOf(field, type.GetGenericArguments()[0]), nameof(ReadAll), value, errors)
                : WhenSet(
                    Expression.NotEqual(value, Expression.Constant(null, value.Type)),
                    Call(ReaderOf(field, type), nameof(Read), value, errors)
                );
        }

        if (field.IsRepeated && field.FieldType != FieldType.Enum)
        {
            return Call(typeof(Numbers), nameof(Numbers.ReadAll), value, errors);
        }

        if (field.IsRepeated)
        {
            return Call(
                typeof(WordNumbers<,>).MakeGenericType(Members.TypeOf(field), type.GetGenericArguments()[0]),
                "ReadAll",
                value,
                errors
            );
        }

        Expression read =
            field.FieldType == FieldType.Enum
                ? Call(typeof(WordNumbers<,>).MakeGenericType(value.Type, Nullable.GetUnderlyingType(type)!), "Read", value, errors)
            : type == typeof(double?) ? Call(typeof(Numbers), nameof(Numbers.Read), value, errors)
            : Expression.Convert(value, type);
        return WhenSet(Expression.Property(message, "Has" + field.PropertyName), read);
    }

    // Of a list that is too long one entry too many is enough: the rules find it too long by that.
    private static Expression Entries(Expression value, FieldDescriptor field, PropertyInfo member) =>
        field.IsRepeated
            ? Expression.Call(
                typeof(MessageReader<TWire, TContract>),
                nameof(AtMost),
                [value.Type.GetGenericArguments()[0]],
                value,
                Expression.Constant(LongLists.Reach(member.GetCustomAttribute<NumberRangeAttribute>()))
            )
            : value;

    private static RepeatedField<T> AtMost<T>(RepeatedField<T> all, int reach) => all.Count <= reach ? all : [.. all.Take(reach)];

    // Null for a field that is not set: protobuf would give the default of its type.
    private static ConditionalExpression WhenSet(Expression set, Expression value) =>
        Expression.Condition(set, value, Expression.Default(value.Type));

    private static Type ReaderOf(FieldDescriptor field, Type record) =>
        typeof(MessageReader<,>).MakeGenericType(Members.TypeOf(field), record);

    // A static method by the types of its arguments; a mapping that does not exist is found when the type is first
    // used.
    private static MethodCallExpression Call(Type owner, string method, params Expression[] arguments) =>
        Expression.Call(owner.GetMethod(method, [.. arguments.Select(argument => argument.Type)])!, arguments);
}
