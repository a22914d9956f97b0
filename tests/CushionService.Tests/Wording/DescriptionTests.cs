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

    private static IEnumerable<PropertyInfo> Properties() =>
        typeof(Order)
            .Assembly.GetTypes()
            .Where(type => type.Namespace == typeof(Order).Namespace && type != typeof(ReceivedOrder))
            .SelectMany(type => type.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly))
            .Where(property => property.CanWrite);
}
