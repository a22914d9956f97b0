using System.Reflection;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Wording;

namespace CushionService.Tests.Wording;

/// <summary>The catalogue's descriptions are the contract's own summaries, and have a translation.</summary>
public sealed class DescriptionTests
{
    private static readonly MessageWriter English = new(Language.English, LengthUnit.Centimetre);

    public static TheoryData<string> Fields => [.. Properties().Select(property => $"{property.DeclaringType!.Name}.{property.Name}")];

    [Theory]
    [MemberData(nameof(Fields))]
    public void A_field_is_described_as_the_contract_documents_it(string field)
    {
        PropertyInfo property = Properties().First(property => $"{property.DeclaringType!.Name}.{property.Name}" == field);

        Message? description = Descriptions.MessageOf(property);

        Assert.True(description is not null, $"DescriptionTexts.resx does not describe {field}.");
        Assert.Equal(new ContractComments().Of(property), English.Text(description));
        Assert.Equal(Language.German, description.Template.Written(Language.German));
    }

    [Fact]
    public void A_construction_is_described_in_German() =>
        Assert.All(
            ConstructionRegistry.All,
            construction => Assert.Equal(Language.German, construction.Offer.Description.Template.Written(Language.German))
        );

    [Theory]
    [InlineData("0.15", "0.15")]
    [InlineData("0 in", "0 in")]
    [InlineData("the workroom's", "wie in der Werkstatt")]
    [InlineData("one step", "ein Schritt")]
    [InlineData("the cushion's width", "die Breite des Kissens")]
    [InlineData("the stitch's, or 2.5", "nach dem Stich, sonst 2.5")]
    [InlineData("1/2 in, or 13 mm in a metric order", "1/2 in, in metrischen Aufträgen 13 mm")]
    public void A_default_is_in_the_readers_language(string english, string german)
    {
        Assert.Equal(english, Defaults.Of(english, English));
        Assert.Equal(german, Defaults.Of(english, new MessageWriter(Language.German, LengthUnit.Centimetre)));
    }

    // The word that joins two figures in English.
    [Fact]
    public void No_default_is_left_in_English() =>
        Assert.All(
            CatalogueWording.In(Language.German).Fields.Where(field => field.Default is not null),
            field => Assert.DoesNotContain("or", field.Default!.Split(' '))
        );

    private static IEnumerable<PropertyInfo> Properties() =>
        typeof(Order)
            .Assembly.GetTypes()
            .Where(type => type.Namespace == typeof(Order).Namespace && type != typeof(ReceivedOrder))
            .SelectMany(type => type.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly))
            .Where(property => property.CanWrite);
}
