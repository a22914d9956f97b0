using System.ComponentModel.DataAnnotations;
using System.Reflection;
using System.Text.Json;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Intake;
using CushionService.Tests.Orders;

namespace CushionService.Tests.Intake;

/// <summary>Texts of a form: amounts of money, ids, currencies.</summary>
public sealed class PatternTests
{
    // What is sound by one pattern or another.
    private static readonly string[] Sound = ["18.90", "18", "USD", "main", "a", "2026-12-24", "#3d6b5c", "https://shop.example/linen"];

    public static TheoryData<string> Patterns() =>
        [
            .. typeof(Order)
                .Assembly.GetTypes()
                .SelectMany(type => type.GetProperties())
                .Select(property => property.GetCustomAttribute<RegularExpressionAttribute>()?.Pattern)
                .OfType<string>()
                .Distinct(),
        ];

    [Theory]
    [MemberData(nameof(Patterns))]
    public void A_pattern_takes_neither_a_newline_nor_letters_and_digits_of_other_scripts(string pattern)
    {
        string[] sound = [.. Sound.Where(text => TextPattern.Of(pattern).IsMatch(text))];

        Assert.NotEmpty(sound);
        Assert.DoesNotContain(@"\d", pattern);
        Assert.DoesNotContain(@"\w", pattern);
        Assert.DoesNotContain(@"\s", pattern);
        foreach (string text in sound)
        {
            Assert.All(
                [$"{text}\n", $"\n{text}", $"{text}\0", $"{text}\u0661", $"\uff11{text}", $"{text}\ud800", $"{text}\u00e9", $" {text}"],
                spoiled => Assert.DoesNotMatch(TextPattern.Of(pattern), spoiled)
            );
        }
    }

    [Fact]
    public void There_are_patterns_to_test() => Assert.True(Patterns().Count >= 3);

    [Theory]
    [InlineData("abc$")]
    [InlineData("^abc")]
    public void A_pattern_that_leaves_an_end_open_is_a_mistake_of_ours(string pattern) =>
        Assert.Throws<ArgumentException>(() => TextPattern.Of(pattern));

    [Theory]
    [InlineData("/currency")]
    [InlineData("/cushions/0/id")]
    [InlineData("/cushions/0/fill/stock")]
    [InlineData("/fabrics/0/id")]
    [InlineData("/fabrics/0/price/amount")]
    [InlineData("/fabrics/0/price/cutFee")]
    [InlineData("/pieces/0/id")]
    [InlineData("/prices/0/item")]
    [InlineData("/prices/0/amount")]
    public void A_newline_at_the_end_and_digits_of_other_scripts_are_refused(string pointer)
    {
        foreach (string text in new[] { "18.90\n", "USD\n", "main\n", "\u0661\u0668", "\uff11\uff18", "18\u0000", "" })
        {
            ValidationAnswer answer = SampleOrder.Validate(JsonSerializer.Serialize(new Dictionary<string, string> { [pointer] = text }));

            Assert.Contains($"{pointer} bad-form", answer.Violations.Select(SampleOrder.Written));
        }
    }
}
