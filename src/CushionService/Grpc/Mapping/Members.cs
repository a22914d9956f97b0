using System.Reflection;
using Google.Protobuf.Reflection;

namespace CushionService.Grpc.Mapping;

/// <summary>Pairs a message's fields with the members of the contract's record: the same words, in snake case and in
/// Pascal case. The mapping is made from these pairs. A field or a member without a partner is never lost in silence:
/// it is an exception, which fails the tests.</summary>
internal static class Members
{
    /// <summary>Every field of a message with its record's member, in the order of the message.</summary>
    /// <param name="message">The message's description, from the proto file.</param>
    /// <param name="record">The record of the contract.</param>
    /// <exception cref="InvalidOperationException">A field or a member has no partner.</exception>
    public static IReadOnlyList<(FieldDescriptor Field, PropertyInfo Member)> Pair(MessageDescriptor message, Type record)
    {
        Dictionary<string, PropertyInfo> members = record
            .GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .ToDictionary(member => member.Name, StringComparer.OrdinalIgnoreCase);
        IList<FieldDescriptor> fields = message.Fields.InDeclarationOrder();
        List<(FieldDescriptor, PropertyInfo)> pairs = [];
        foreach (FieldDescriptor field in fields)
        {
            pairs.Add(
                members.Remove(field.JsonName, out PropertyInfo? member)
                    ? (field, member)
                    : throw new InvalidOperationException($"{record.Name} has no member for {message.Name}.{field.Name}.")
            );
        }

        return members.Count == 0
            ? pairs
            : throw new InvalidOperationException($"{message.Name} has no field for {record.Name}.{members.Keys.First()}.");
    }

    /// <summary>The CLR type of a message or enumeration field's value.</summary>
    /// <param name="field">A field that holds a message or a word, alone or in a list.</param>
    public static Type TypeOf(FieldDescriptor field) =>
        field.FieldType == FieldType.Enum ? field.EnumType.ClrType : field.MessageType.ClrType;
}
