namespace CushionService.Access;

/// <summary>Marks a call that a page with a publishable key may make too, whatever scope others need for it.</summary>
/// <param name="fields">The only fields of the answer that it may ask for, or their beginnings; none for all of the answer.</param>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class PageCallAttribute(params string[] fields) : Attribute
{
    /// <summary>Whether a page may make this call: in JSON, and for the fields that it may see.</summary>
    public bool Admits(HttpRequest request)
    {
        string asked = request.Query["fields"].ToString();
        return !IsDocument(request)
            && (
                fields.Length == 0
                || (
                    asked.Length > 0
                    && asked
                        .Split(',')
                        .All(path => fields.Any(field => path == field || path.StartsWith(field + ".", StringComparison.Ordinal)))
                )
            );
    }

    // Papers of the workroom, such as cut sheets and patterns, are not for pages; pictures are.
    private static bool IsDocument(HttpRequest request) =>
        request.Headers.Accept.ToString() is { Length: > 0 } accept
        && !accept.Contains("json", StringComparison.OrdinalIgnoreCase)
        && !accept.Contains("*/*", StringComparison.Ordinal)
        && !accept.Contains("svg", StringComparison.OrdinalIgnoreCase);
}
