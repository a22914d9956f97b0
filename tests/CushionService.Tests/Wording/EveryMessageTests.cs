using System.Collections;
using System.Reflection;
using System.Text.RegularExpressions;
using CushionService.Desk;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Quoting;

namespace CushionService.Tests.Wording;

/// <summary>Every message of every resource file is written well with whatever values the code may pass.</summary>
public sealed partial class EveryMessageTests
{
    private const int Draws = 60;
    private const string LongName = "The library's deep window seat, upper floor, second from the left (re-covered)";

    private static readonly MessageTemplate Part = new("test.part", [], [(Language.English, [MessagePart.Text("2 sheets of foam")])]);
    private static readonly Fraction Third = Fraction.Of(1, 3);

    private static readonly Dictionary<Type, object[]> Boundaries = new()
    {
        [typeof(long)] = [0L, 1L, 2L, 5L, 21L, 1_000_000L],
        [typeof(decimal)] = [0m, 0.0001m, 1m, 1234.5m],
        [typeof(bool)] = [false, true],
        [typeof(string)] = ["seat", LongName],
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

    private static readonly MethodInfo[] Makers =
    [
        .. new[] { typeof(Quote).Assembly, typeof(OrderDesk).Assembly }
            .SelectMany(assembly => assembly.GetTypes())
            .Where(type => type is { IsAbstract: true, IsSealed: true } && type.Name.EndsWith("Texts", StringComparison.Ordinal))
            .SelectMany(type => type.GetMethods(BindingFlags.Public | BindingFlags.Static))
            .Where(method => method.ReturnType == typeof(Message) && method.Name != "Find"),
    ];

    public static TheoryData<string> Names => [.. Makers.Select(NameOf)];

    [Fact]
    public void The_cautions_are_among_them() => Assert.Contains("CautionTexts.get_Infants", Makers.Select(NameOf));

    [Theory]
    [MemberData(nameof(Names))]
    public void A_message_is_written_well_in_every_language(string name)
    {
        MethodInfo maker = Makers.Single(maker => NameOf(maker) == name);
        for (var draw = 0; draw < Draws; draw++)
        {
            var random = new Random(draw);
            object?[] values = [.. maker.GetParameters().Select(parameter => Value(parameter, random))];
            var message = (Message)maker.Invoke(null, values)!;
            foreach (Language language in Enum.GetValues<Language>())
            {
                string text = new MessageWriter(language, draw % 2 == 0 ? LengthUnit.Inch : LengthUnit.Centimetre).Text(message);

                Assert.DoesNotMatch(Faults(), text);
                Assert.NotEqual("", text);
            }
        }
    }

    [Theory]
    [InlineData("Sew {n} buttons.")]
    [InlineData("Sew  2 buttons.")]
    [InlineData("Sew 2 buttons .")]
    [InlineData("Sew 2 buttons ")]
    [InlineData("Sew # buttons.")]
    public void What_is_looked_for_is_found(string text) => Assert.Matches(Faults(), text);

    // A name of the grammar left over, two spaces, a space before a comma or a full stop, a space at an end.
    [GeneratedRegex(@"[{}#]|  | [.,;:]|^\s|\s$|\.\.$")]
    private static partial Regex Faults();

    private static string NameOf(MethodInfo maker) => $"{maker.DeclaringType!.Name}.{maker.Name}";

    private static object? Value(ParameterInfo parameter, Random random)
    {
        Type type = parameter.ParameterType;
        bool mayBeNull = new NullabilityInfoContext().Create(parameter).WriteState == NullabilityState.Nullable;
        return mayBeNull && random.Next(2) == 0 ? null : Value(Nullable.GetUnderlyingType(type) ?? type, random);
    }

    // A list has an entry at least: a message that may have none says so, and its own test shows it.
    private static object Value(Type type, Random random)
    {
        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IEnumerable<>))
        {
            Type entry = type.GenericTypeArguments[0];
            var list = (IList)Activator.CreateInstance(typeof(List<>).MakeGenericType(entry))!;
            for (int count = random.Next(1, 5); count > 0; count--)
            {
                list.Add(Value(entry, random));
            }

            return list;
        }

        if (type == typeof(Message))
        {
            return new Message(Part, []);
        }

        object[] values = type.IsEnum ? [.. Enum.GetValues(type).Cast<object>()] : Boundaries[type];
        return values[random.Next(values.Length)];
    }
}
