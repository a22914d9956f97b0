using System.Collections;
using System.Reflection;
using CushionService.Desk;
using CushionService.Engine.Cutting;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Quoting;

namespace CushionService.Tests.Wording;

/// <summary>Messages of every resource file with boundary values: 0, 1, 2, 5, 21, a million; fractions; the longest names.</summary>
internal static class MessageSamples
{
    /// <summary>A name as long as any.</summary>
    public const string LongName = "The library's deep window seat, upper floor, second from the left (re-covered)";

    private static readonly MessageTemplate Part = new("test.part", [], [(Language.English, [MessagePart.Text("2 × Xq")])]);
    private static readonly Fraction Third = Fraction.Of(1, 3);

    private static readonly Dictionary<Type, object[]> Boundaries = new()
    {
        [typeof(long)] = [0L, 1L, 2L, 5L, 21L, 1_000_000L],
        [typeof(decimal)] = [0m, 0.0001m, 1m, 1234.5m],
        [typeof(bool)] = [false, true],
        [typeof(Length)] = [Length.Zero, Length.FromInches(0.5m), Length.FromMillimetres(1234.5m)],
        [typeof(Area)] = [Area.Of(Length.Zero, Length.Zero), Area.Of(Length.FromInches(44), Length.FromInches(18.5m))],
        [typeof(Volume)] = [new Volume(0), new Volume(12_345_678.9m)],
        [typeof(Mass)] = [new Mass(0), new Mass(1234.5m)],
        [typeof(Force)] = [new Force(0), new Force(156.8m)],
        [typeof(Money)] = [new Money(0, new Currency("EUR")), new Money(1234.5m, new Currency("JPY"))],
        [typeof(Fraction)] = [default(Fraction), Third, Fraction.Of(1, 1)],
        [typeof(SaleAmount)] = [new SaleAmount(Third, SaleUnit.Yd), SaleAmount.Of(0.7m, SaleUnit.M), SaleAmount.Of(3, SaleUnit.Each)],
        [typeof(EdgeName)] = [EdgeName.Front, new EdgeName(EdgeWord.Side, 12).With(EdgeWord.Return).With(EdgeWord.Second)],
        [typeof(PartName)] =
        [
            PartName.Top,
            new PartName(PartKind.Boxing)
            {
                Number = 12,
                Stretch = 3,
                IsInner = true,
            },
        ],
    };

    /// <summary>What makes a message of each key.</summary>
    public static MethodInfo[] Makers { get; } =
    [
        .. new[] { typeof(Quote).Assembly, typeof(OrderDesk).Assembly }
            .SelectMany(assembly => assembly.GetTypes())
            .Where(type => type is { IsAbstract: true, IsSealed: true } && type.Name.EndsWith("Texts", StringComparison.Ordinal))
            .SelectMany(type => type.GetMethods(BindingFlags.Public | BindingFlags.Static))
            .Where(method => method.ReturnType == typeof(Message) && method.Name != "Find"),
    ];

    /// <summary>The class and the name of a message.</summary>
    public static string NameOf(MethodInfo maker) => $"{maker.DeclaringType!.Name}.{maker.Name}";

    /// <summary>A message with values drawn at random.</summary>
    /// <param name="name">The class and the name of the message.</param>
    /// <param name="random">Draws the values.</param>
    /// <param name="names">What a caller may have called things.</param>
    public static Message Draw(string name, Random random, params string[] names)
    {
        MethodInfo maker = Makers.Single(maker => NameOf(maker) == name);
        return (Message)maker.Invoke(null, [.. maker.GetParameters().Select(parameter => Value(parameter, random, names))])!;
    }

    private static object? Value(ParameterInfo parameter, Random random, string[] names)
    {
        Type type = parameter.ParameterType;
        bool mayBeNull = new NullabilityInfoContext().Create(parameter).WriteState == NullabilityState.Nullable;
        return mayBeNull && random.Next(2) == 0 ? null : Value(Nullable.GetUnderlyingType(type) ?? type, random, names);
    }

    // A list has an entry at least: a message that may have none says so, and its own test shows it.
    private static object Value(Type type, Random random, string[] names)
    {
        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IEnumerable<>))
        {
            Type entry = type.GenericTypeArguments[0];
            var list = (IList)Activator.CreateInstance(typeof(List<>).MakeGenericType(entry))!;
            for (int count = random.Next(1, 5); count > 0; count--)
            {
                list.Add(Value(entry, random, names));
            }

            return list;
        }

        if (type == typeof(Message))
        {
            return new Message(Part, []);
        }

        if (type == typeof(PieceName))
        {
            string name = names[random.Next(names.Length)];
            return new PieceName(name, random.Next(2) == 0 ? null : name, (PartName)Value(typeof(PartName), random, names));
        }

        object[] values =
            type == typeof(string) ? names
            : type.IsEnum ? [.. Enum.GetValues(type).Cast<object>()]
            : Boundaries[type];
        return values[random.Next(values.Length)];
    }
}
