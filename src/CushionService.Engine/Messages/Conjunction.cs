namespace CushionService.Engine.Messages;

/// <summary>What comes between the entries of a list, or before the last.</summary>
public enum Conjunction
{
    /// <summary>A comma, as between the others.</summary>
    None,

    /// <summary>The word for "and".</summary>
    And,

    /// <summary>The word for "or".</summary>
    Or,

    /// <summary>A plus sign, between all.</summary>
    Sum,

    /// <summary>A semicolon, between all.</summary>
    Semicolon,

    /// <summary>What says that one is joined to the next, between all.</summary>
    To,
}
