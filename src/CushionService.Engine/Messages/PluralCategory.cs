namespace CushionService.Engine.Messages;

/// <summary>The form that a number asks of the words beside it.</summary>
public enum PluralCategory
{
    /// <summary>Every number that has no form of its own.</summary>
    Other,

    /// <summary>The singular.</summary>
    One,

    /// <summary>Whole millions in French and Spanish: "un million de coussins".</summary>
    Many,
}
