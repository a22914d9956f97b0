namespace CushionService.Engine.Messages;

/// <summary>A language that the service writes.</summary>
public enum Language
{
    /// <summary>English, which every message has.</summary>
    English,

    /// <summary>German.</summary>
    German,

    /// <summary>French.</summary>
    French,

    /// <summary>Spanish.</summary>
    Spanish,
}
