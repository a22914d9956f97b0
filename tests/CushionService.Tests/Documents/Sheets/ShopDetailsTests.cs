using CushionService.Documents.Projects;
using Microsoft.Extensions.Configuration;

namespace CushionService.Tests.Documents.Sheets;

/// <summary>What a shop writes on its project sheets is checked when the service starts.</summary>
public sealed class ShopDetailsTests
{
    [Fact]
    public void Nothing_is_needed() => Assert.Equal(ShopDetails.None, Read());

    [Fact]
    public void Name_link_and_colour_are_read() =>
        Assert.Equal(
            new ShopDetails("The Long Room", new Uri("https://shop.example/"), "#1F5A44"),
            Read(("Shop:Name", "The Long Room"), ("Shop:Link", "https://shop.example/"), ("Shop:Colour", "#1F5A44"))
        );

    [Theory]
    [InlineData("Shop:Link", "javascript:alert(1)", "https://")]
    [InlineData("Shop:Link", "shop", "https://")]
    [InlineData("Shop:Colour", "green", "six hexadecimal digits")]
    [InlineData("Shop:Colour", "#12345", "six hexadecimal digits")]
    [InlineData("Shop:Colour", "#FFE680", "too pale")] // 1.26 to 1 on white; WCAG 2.2, 1.4.3 asks for 4.5
    public void What_cannot_be_printed_stops_the_start(string key, string value, string said) =>
        Assert.Contains(said, Assert.Throws<InvalidDataException>(() => Read((key, value))).Message, StringComparison.Ordinal);

    [Fact]
    public void A_name_that_fills_the_page_is_refused() =>
        Assert.Throws<InvalidDataException>(() => Read(("Shop:Name", new string('n', 81))));

    private static ShopDetails Read(params (string Key, string Value)[] settings) =>
        ShopDetails.Of(
            new ConfigurationBuilder()
                .AddInMemoryCollection(settings.ToDictionary(setting => setting.Key, setting => (string?)setting.Value))
                .Build()
                .GetSection(ShopDetails.Section)
        );
}
