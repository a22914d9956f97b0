namespace CushionService.MessageGenerator;

/// <summary>One <c>data</c> element of a resource file.</summary>
/// <param name="key">Its name.</param>
/// <param name="value">The template, on one line.</param>
/// <param name="comment">The declaration of its arguments; empty for none.</param>
/// <param name="line">Where the element begins, from 0.</param>
internal sealed class ResxEntry(string key, string value, string comment, int line)
{
    /// <summary>The key, in kebab case when it is sound.</summary>
    public string Key => key;

    /// <summary>The template, in the grammar that <see cref="TemplateReader"/> reads.</summary>
    public string Value => value;

    /// <summary>The declaration of the arguments; in a translation it is not read.</summary>
    public string Comment => comment;

    /// <summary>Where to report what is wrong with it, from 0.</summary>
    public int Line => line;
}
