using System.Reflection;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Intake;
using CushionService.PriceBooks;
using CushionService.Tests.Orders;
using FluentValidation;
using FluentValidation.Internal;
using FluentValidation.Validators;

namespace CushionService.Tests.Intake;

/// <summary>What intake finds is a message with its values; the sentence is made of it for the reader.</summary>
public sealed class FindingMessageTests
{
    public static TheoryData<string, Type> Validators =>
        new()
        {
            { nameof(OrderValidator), typeof(OrderValidator) },
            { nameof(ComparisonValidator), typeof(ComparisonValidator) },
            { nameof(CostingValidator), typeof(CostingValidator) },
            { nameof(PriceBookValidator), typeof(PriceBookValidator) },
        };

    [Fact]
    public void A_range_holds_its_lengths_and_is_written_in_the_unit_of_the_reader()
    {
        Message message = Found("""{ "/cushions/0/thickness": 100 }""", "/cushions/0/thickness");

        Assert.Equal(FieldTexts.LengthRange("Thickness", Length.FromInches(0.25m), Length.FromInches(24)), message);
        Assert.Equal("Thickness must be between 1/4 in and 24 in.", Written(message, LengthUnit.Inch));
        Assert.Equal("Thickness must be between about 6.4 mm and 609.6 mm.", Written(message, LengthUnit.Millimetre));
    }

    [Fact]
    public void A_field_is_named_in_the_language_of_its_sentence()
    {
        Message message = Found("""{ "/cushions/0/thickness": 100 }""", "/cushions/0/thickness");

        Assert.StartsWith("Stärke: ", new MessageWriter(Language.German, LengthUnit.Centimetre).Text(message), StringComparison.Ordinal);
        Assert.StartsWith("Épaisseur", new MessageWriter(Language.French, LengthUnit.Centimetre).Text(message), StringComparison.Ordinal);
        Assert.StartsWith("Grosor", new MessageWriter(Language.Spanish, LengthUnit.Centimetre).Text(message), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_field_of_an_order_has_words_in_every_language()
    {
        Type names = typeof(Message).Assembly.GetType("CushionService.Engine.Messages.FieldNameTexts", throwOnError: true)!;
        string[] fields =
        [
            .. typeof(Order)
                .Assembly.GetTypes()
                .Where(type => type.Namespace == typeof(Order).Namespace && type != typeof(ReceivedOrder))
                .SelectMany(type => type.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly))
                .Select(property => property.Name)
                .Distinct(),
        ];

        Assert.Contains("SeamAllowance", fields);
        Assert.All(
            fields,
            field =>
            {
                var name = names.GetProperty(field)?.GetValue(null) as Message;
                Assert.True(name is not null, $"FieldNameTexts.resx has no words for {field}.");
                Assert.Equal(FieldNames.Words(field), Written(name, LengthUnit.Inch));
                Assert.All(Enum.GetValues<Language>(), language => Assert.Equal(language, name.Template.Written(language)));
            }
        );
    }

    [Theory]
    [InlineData("/fabrics/0/sold/step", "Step must be between 0.01 yd and 110 yd.")] // 0.01 m and 100 m are 0.0109 yd and 109.4 yd.
    [InlineData("/fabrics/1/sold/step", "Step must be between 0.01 m and 100 m.")]
    public void A_range_of_a_sale_is_written_in_its_unit_of_sale_whatever_the_reader_has(string pointer, string sentence)
    {
        Message message = Found($$"""{ "{{pointer}}": 200 }""", pointer);

        Assert.Equal(sentence, Written(message, LengthUnit.Inch));
        Assert.Equal(sentence, Written(message, LengthUnit.Millimetre));
    }

    [Theory]
    [InlineData("/currency", "\"eur\"", "Currency must be the three capital letters of a currency (ISO 4217), such as EUR.")]
    [InlineData("/cushions/0/id", "\"a b\"", "Id must be 1 to 64 letters, digits, dots, hyphens or underscores, and no spaces.")]
    [InlineData("/cushions/0/closure/side", "\"front\"", "A closure at the front shows. It is usually at the back.")]
    [InlineData("/cushions/0/fabrics", "{ \"top\": \"silk\" }", "No fabric with id silk in this order.")]
    public void A_finding_says_what_to_do(string pointer, string value, string sentence)
    {
        IntakeResult taken = Read($$"""{ "{{pointer}}": {{value}} }""");

        Assert.Contains(sentence, taken.Violations.Concat(taken.Warnings).Select(found => Written(found.Detail, LengthUnit.Inch)));
    }

    [Fact]
    public void What_may_be_chosen_is_listed()
    {
        Message message = Found("""{ "/cushions/0/construction": "pouf" }""", "/cushions/0/outline/kind");

        Assert.Equal("shape.outline-not-offered", message.Key);
        Assert.Equal(ShapeTexts.OutlineNotOffered(Construction.Pouf, OutlineKind.Rectangle, [OutlineKind.Circle]), message);
        Assert.Equal(
            "Construction pouf cannot have closure ties. Choose zipper or hand-sewn.",
            Written(
                ClosureTexts.NotOffered(Construction.Pouf, ClosureKind.Ties, [ClosureKind.Zipper, ClosureKind.HandSewn]),
                LengthUnit.Inch
            )
        );
    }

    [Theory]
    [MemberData(nameof(Validators))]
    public void Every_rule_of_a_validator_carries_a_message_as_its_state(string name, Type type)
    {
        var validator = (IValidator)Activator.CreateInstance(type, nonPublic: true)!;
        // A Custom rule has no code here: it gives one with each failure.
        IRuleComponent[] rules =
        [
            .. validator
                .CreateDescriptor()
                .Rules.SelectMany(rule => rule.Components)
                .Where(rule => rule.Validator is not IChildValidatorAdaptor && rule.ErrorCode is not null),
        ];

        Assert.NotEmpty(rules);
        Assert.All(rules, rule => Assert.True(StateOf(rule) is not null, $"{name}: {rule.Validator.Name}, {rule.ErrorCode}"));
    }

    [Fact]
    public void A_rule_without_a_message_is_our_own_error()
    {
        InlineValidator<Order> validator = [];
        validator.RuleFor(order => order.Units).Null();
        Findings findings = new(LengthUnit.Inch, new FindingList());

        Assert.Throws<InvalidOperationException>(() => findings.Report(validator.Validate(SampleOrder.Changed("{}"))));
    }

    // The state is a member of the generic component alone.
    private static object? StateOf(IRuleComponent rule) => rule.GetType().GetProperty("CustomStateProvider")!.GetValue(rule);

    private static Message Found(string changes, string pointer) =>
        Read(changes).Violations.Single(violation => violation.Pointer == pointer).Detail;

    private static IntakeResult Read(string changes) => OrderIntake.Read(SampleOrder.Changed(changes), null, Purpose.Making);

    private static string Written(Message message, LengthUnit unit) => new MessageWriter(Language.English, unit).Text(message);
}
