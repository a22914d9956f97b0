using System.Reflection;
using System.Reflection.Emit;

namespace CushionService.Tests.Architecture;

/// <summary>The types that a type names: its base, members, attributes and what the bodies of its methods call.</summary>
internal static class UsedTypes
{
    private const BindingFlags Declared =
        BindingFlags.DeclaredOnly | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.Instance;

    private static readonly Dictionary<short, OpCode> Instructions = typeof(OpCodes)
        .GetFields()
        .Select(field => (OpCode)field.GetValue(null)!)
        .ToDictionary(code => code.Value);

    public static IReadOnlySet<Type> Of(Type type)
    {
        IEnumerable<MethodBase> methods = [.. type.GetMethods(Declared), .. type.GetConstructors(Declared)];
        return (HashSet<Type>)
            [
                .. new[] { type.BaseType }
                    .Concat(type.GetInterfaces())
                    .Concat(type.GetCustomAttributesData().Select(attribute => attribute.AttributeType))
                    .Concat(type.GetFields(Declared).Select(field => field.FieldType))
                    .Concat(methods.SelectMany(method => method.GetParameters()).Select(parameter => parameter.ParameterType))
                    .Concat(methods.OfType<MethodInfo>().Select(method => method.ReturnType))
                    .Concat(methods.SelectMany(InBody))
                    .SelectMany(Parts),
            ];
    }

    // A generic type names its arguments, an array its element.
    private static IEnumerable<Type> Parts(Type? type) =>
        type is null ? []
        : type.HasElementType ? Parts(type.GetElementType())
        : type.IsGenericType ? type.GetGenericArguments().SelectMany(Parts).Append(type.GetGenericTypeDefinition())
        : [type];

    private static IEnumerable<Type?> InBody(MethodBase method)
    {
        if (method.GetMethodBody() is not { } body || body.GetILAsByteArray() is not { } code)
        {
            return [];
        }

        var used = new List<Type?>(body.LocalVariables.Select(local => local.LocalType));
        for (var at = 0; at < code.Length; )
        {
            short value = code[at] == 0xFE ? (short)(0xFE00 | code[at + 1]) : code[at];
            OpCode instruction = Instructions[value];
            at += instruction.Size;
            if (
                instruction.OperandType
                is OperandType.InlineMethod
                    or OperandType.InlineField
                    or OperandType.InlineType
                    or OperandType.InlineTok
            )
            {
                used.AddRange(Named(method, BitConverter.ToInt32(code, at)));
            }

            at += instruction.OperandType switch
            {
                OperandType.InlineNone => 0,
                OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar => 1,
                OperandType.InlineVar => 2,
                OperandType.InlineI8 or OperandType.InlineR => 8,
                OperandType.InlineSwitch => 4 + (4 * BitConverter.ToInt32(code, at)),
                _ => 4,
            };
        }

        return used;
    }

    private static IEnumerable<Type?> Named(MethodBase method, int token)
    {
        Type[]? ofType = method.DeclaringType!.IsGenericType ? method.DeclaringType.GetGenericArguments() : null;
        Type[]? ofMethod = method.IsGenericMethod ? method.GetGenericArguments() : null;
        return method.Module.ResolveMember(token, ofType, ofMethod) switch
        {
            Type type => [type],
            FieldInfo field => [field.DeclaringType, field.FieldType],
            MethodInfo called => [called.DeclaringType, called.ReturnType, .. called.IsGenericMethod ? called.GetGenericArguments() : []],
            MemberInfo member => [member.DeclaringType],
            _ => [],
        };
    }
}
