using System.Collections;
using CushionService.Contract;
using CushionService.Engine.Specifications;
using CushionService.Json;
using Google.Protobuf;
using Google.Protobuf.Reflection;
using Google.Protobuf.WellKnownTypes;

namespace CushionService.Grpc;

/// <summary>Keeps those fields of an answer that a caller asks for, by a <c>google.protobuf.FieldMask</c>. As over REST,
/// a path may go through a list: it then means the field of every entry.</summary>
internal static class AnswerMask
{
    // As many as REST reports at most.
    private const int MostViolations = 20;

    /// <summary>Reads a mask.</summary>
    /// <param name="mask">The mask; null or without paths means all fields.</param>
    /// <param name="answer">The message that answers.</param>
    /// <returns>The fields, null for all; and a violation for each path that the answer does not have, twenty at
    /// most.</returns>
    public static (FieldTree? Fields, IReadOnlyList<Violation> Violations) Read(FieldMask? mask, MessageDescriptor answer)
    {
        if (mask is not { Paths: { Count: > 0 } paths } || paths is ["*"])
        {
            return (null, []);
        }

        FieldTree fields = new();
        List<Violation> violations = [];
        foreach (string path in paths)
        {
            string[] names = path.Split('.');
            if (Missing(names, answer) is not { } members)
            {
                fields.Add(names);
            }
            else if (violations.Count < MostViolations)
            {
                violations.Add(AnswerFields.Unknown(path, members));
            }
        }

        return (fields, violations);
    }

    /// <summary>Clears every field that is not asked for.</summary>
    /// <param name="answer">The answer; it is changed.</param>
    /// <param name="fields">What is asked for.</param>
    public static void Keep(IMessage answer, FieldTree fields)
    {
        foreach (FieldDescriptor field in answer.Descriptor.Fields.InDeclarationOrder())
        {
            if (fields[field.Name] is not { } inner)
            {
                field.Accessor.Clear(answer);
            }
            else if (!inner.IsWhole && field.Accessor.GetValue(answer) is { } value)
            {
                // A list or one message: what is asked for within holds for every entry.
                foreach (IMessage message in value is IMessage one ? new[] { one } : (IEnumerable)value)
                {
                    Keep(message, inner);
                }
            }
        }
    }

    // The fields that there are where a path goes wrong; null when it does not. An amount of money and a pair are values
    // over REST, and so they are here.
    private static string[]? Missing(string[] names, MessageDescriptor answer)
    {
        MessageDescriptor? type = answer;
        foreach (string name in names)
        {
            if (type?.FindFieldByName(name) is not { } field)
            {
                return [.. type?.Fields.InDeclarationOrder().Select(known => known.Name) ?? []];
            }

            type = field.FieldType == FieldType.Message && IsRecord(field.MessageType) ? field.MessageType : null;
        }

        return null;
    }

    private static bool IsRecord(MessageDescriptor message) =>
        message.File.Package == V1.QuoteRequest.Descriptor.File.Package
        && message != V1.Measure.Descriptor
        && message != V1.Point.Descriptor;
}
