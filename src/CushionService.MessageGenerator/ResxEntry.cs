namespace CushionService.MessageGenerator;

/// <summary>One <c>data</c> element of a resource file.</summary>
/// <param name="key">Its name.</param>
/// <param name="value">The template, on one line.</param>
/// <param name="comment">The declaration of its arguments; empty for none.</param>
/// <param name="line">Where the element begins, from 0.</param>
internal sealed class ResxEntry(string key, string value, string comment, int line)
{
    public string Key => key;

    public string Value => value;

    public string Comment => comment;

    public int Line => line;
}
