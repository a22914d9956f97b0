namespace CushionService.Languages;

/// <summary>Marks a call whose query may name the reader's language, so that its address has one answer for every reader.</summary>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class LanguageParameterAttribute : Attribute
{
    /// <summary>The parameter.</summary>
    public const string Name = "language";
}
