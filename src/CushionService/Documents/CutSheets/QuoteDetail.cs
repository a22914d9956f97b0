namespace CushionService.Documents.CutSheets;

/// <summary>The documents that a quote is printed as, by the names that callers give them.</summary>
internal static class QuoteDetail
{
    /// <summary>All there is to say.</summary>
    public const string Full = "full";

    /// <summary>The sheet for who sews it at home.</summary>
    public const string Project = "project";

    /// <summary>The ticket for the workroom.</summary>
    public const string Ticket = "ticket";

    /// <summary>How callers name them, for documentation and refusals.</summary>
    public static readonly string[] Names = [Ticket, Full, Project];

    /// <summary>Whether there is a document of that name.</summary>
    public static bool IsKnown(string name) => Names.Contains(name);
}
