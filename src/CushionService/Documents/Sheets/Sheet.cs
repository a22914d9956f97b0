using CushionService.Engine.Messages;

namespace CushionService.Documents.Sheets;

/// <summary>A document to print, as data.</summary>
internal sealed record Sheet
{
    /// <summary>Its title, which its first heading repeats and every page has at its foot.</summary>
    public required string Title { get; init; }

    /// <summary>The language that it is written in.</summary>
    public required Language Language { get; init; }

    /// <summary>What it is printed on.</summary>
    public required Paper Paper { get; init; }

    /// <summary>How it looks.</summary>
    public required Look Look { get; init; }

    /// <summary>Its parts, each on a page of its own.</summary>
    public required IReadOnlyList<Section> Sections { get; init; }

    /// <summary>Writes the number of a page and of all pages.</summary>
    public required Func<int, int, string> PageNumber { get; init; }
}
