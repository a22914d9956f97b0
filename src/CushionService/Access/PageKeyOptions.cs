using System.Collections.Frozen;

namespace CushionService.Access;

/// <summary>A publishable key as it is configured. It is in the shop's pages, and so is no secret: it is here as it is.</summary>
internal sealed class PageKeyOptions : GrantOptions
{
    private const int Shortest = 16,
        Longest = 200;

    /// <summary>Whose pages they are.</summary>
    public string? Name { get; init; }

    /// <summary>The key, 16 to 200 letters, digits, hyphens and underscores, as <c>pk_reading-nook_2f41</c>.</summary>
    public string? Key { get; init; }

    /// <summary>The origins of the pages, as <c>https://shop.example</c>.</summary>
    public string[] Origins { get; init; } = [];

    /// <summary>The name of the price book that prices their orders; without one they show no prices.</summary>
    public string? PriceBook { get; init; }

    /// <summary>Reads the key. One with errors is returned too.</summary>
    /// <param name="otherwise">The limits of a shop's page.</param>
    /// <param name="place">Where it is in the configuration.</param>
    /// <param name="errors">Gets a sentence for each fault.</param>
    public PageKey ReadKey(Grant otherwise, string place, List<string> errors)
    {
        if (string.IsNullOrWhiteSpace(Name))
        {
            errors.Add($"{place}:Name is required.");
        }

        if (Key is not { Length: >= Shortest and <= Longest } || !Key.All(sign => char.IsAsciiLetterOrDigit(sign) || sign is '-' or '_'))
        {
            errors.Add($"{place}:Key must be {Shortest} to {Longest} letters, digits, hyphens and underscores.");
        }

        if (Scopes is not null)
        {
            errors.Add($"{place}:Scopes: a publishable key has the calls of a page, and no other.");
        }

        if (Origins.Length == 0 || Array.Find(Origins, origin => !Access.Origins.IsOrigin(origin)) is not null)
        {
            errors.Add($"{place}:Origins must list the origins of its pages, such as https://shop.example.");
        }

        Grant grant = Read(otherwise, place, errors);
        return new PageKey(Name ?? "", grant, Origins.ToFrozenSet(StringComparer.OrdinalIgnoreCase), PriceBook);
    }
}
