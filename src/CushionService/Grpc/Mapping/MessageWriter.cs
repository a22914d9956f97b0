using System.Linq.Expressions;
using System.Text.Json.Nodes;
using Google.Protobuf;
using Google.Protobuf.Collections;
using Google.Protobuf.Reflection;

namespace CushionService.Grpc.Mapping;

/// <summary>Maps a record of the contract to its message, member by member of the same name. The mapping is compiled
/// once for each type, from the descriptions of both sides: a new field needs no code here.</summary>
/// <typeparam name="TContract">The record.</typeparam>
/// <typeparam name="TWire">The message.</typeparam>
internal static class MessageWriter<TContract, TWire>
    where TWire : IMessage<TWire>, new()
{
    private static readonly Func<TContract, string, TWire> Compiled = Compile();

    /// <summary>The message of a record.</summary>
    /// <param name="record">The record.</param>
    /// <param name="currency">The currency of its amounts, from the record around it; a record that names its own takes
    /// that.</param>
    public static TWire Write(TContract record, string currency) => Compiled(record, currency);

    /// <summary>Adds the messages of a list of records; nothing for null.</summary>
    /// <param name="records">The records.</param>
    /// <param name="messages">The field that gets them.</param>
    /// <param name="currency">The currency of their amounts.</param>
    public static void WriteAll(IReadOnlyList<TContract>? records, RepeatedField<TWire> messages, string currency)
    {
        if (records is not null)
        {
            messages.Capacity = records.Count;
            for (int i = 0; i < records.Count; i++)
            {
                messages.Add(Compiled(records[i], currency));
            }
        }
    }

    // var message = new TWire(); message.Field = value; ...; return message.
    private static Func<TContract, string, TWire> Compile()
    {
        ParameterExpression record = Expression.Parameter(typeof(TContract));
        ParameterExpression outer = Expression.Parameter(typeof(string));
        ParameterExpression message = Expression.Variable(typeof(TWire));
        Expression currency = typeof(TContract).GetProperty("Currency") is { } named ? Expression.Property(record, named) : outer;
        List<Expression> body = [Expression.Assign(message, Expression.New(typeof(TWire)))];
        body.AddRange(
            Members
                .Pair(new TWire().Descriptor, typeof(TContract))
                .Select(pair =>
                    Assignment(
                        Expression.Property(record, pair.Member),
                        Expression.Property(message, pair.Field.PropertyName),
                        pair.Field,
                        currency
                    )
                )
        );
        body.Add(message);
        return Expression.Lambda<Func<TContract, string, TWire>>(Expression.Block([message], body), record, outer).Compile();
    }

    // A field is set unless the member is null: protobuf has no null, and an unset field says the same.
    private static Expression Assignment(Expression value, Expression target, FieldDescriptor field, Expression currency)
    {
        if (field.IsRepeated)
        {
            Type element = value.Type.GetGenericArguments()[0];
            return field.FieldType switch
            {
                FieldType.Message => Call(WriterOf(field, element), nameof(WriteAll), value, target, currency),
                FieldType.Enum => Call(typeof(WordNumbers<,>).MakeGenericType(Members.TypeOf(field), element), "WriteAll", value, target),
                _ => Expression.Call(target, "AddRange", null, value),
            };
        }

        Expression plain = Nullable.GetUnderlyingType(value.Type) is null ? value : Expression.Property(value, "Value");
        Expression written = field.FieldType switch
        {
            FieldType.Message when value.Type == typeof(string) => Call(typeof(Amounts), nameof(Amounts.Write), value, currency),
            FieldType.Message when value.Type == typeof(JsonObject) => Call(typeof(Structs), nameof(Structs.Write), value),
            FieldType.Message => Call(WriterOf(field, value.Type), nameof(Write), value, currency),
            FieldType.Enum => Call(typeof(WordNumbers<,>).MakeGenericType(target.Type, plain.Type), "Write", plain),
            _ => plain,
        };
        Expression assign = Expression.Assign(target, written);
        bool mayBeNull = !value.Type.IsValueType || plain != value;
        return mayBeNull ? Expression.IfThen(Expression.NotEqual(value, Expression.Constant(null, value.Type)), assign) : assign;
    }

    private static Type WriterOf(FieldDescriptor field, Type record) =>
        typeof(MessageWriter<,>).MakeGenericType(record, Members.TypeOf(field));

    // A static method by the types of its arguments; a mapping that does not exist is found when the type is first
    // used.
    private static MethodCallExpression Call(Type owner, string method, params Expression[] arguments) =>
        Expression.Call(owner.GetMethod(method, [.. arguments.Select(argument => argument.Type)])!, arguments);
}
