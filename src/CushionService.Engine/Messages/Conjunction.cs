namespace CushionService.Engine.Messages;

/// <summary>What comes before the last entry of a list.</summary>
public enum Conjunction
{
    /// <summary>A comma, as between the others.</summary>
    None,

    /// <summary>The word for "and".</summary>
    And,

    /// <summary>The word for "or".</summary>
    Or,
}
