namespace CushionService.Access;

/// <summary>The names of the scopes in keys, tokens and answers.</summary>
internal static class ScopeNames
{
    private static readonly (string Name, Scopes Scope)[] Known =
    [
        ("estimate", Scopes.Estimate),
        ("quote", Scopes.Quote),
        ("batch", Scopes.Batch),
        ("prices:inline", Scopes.InlinePrices),
    ];

    /// <summary>Every name, separated by spaces as in a token's scope (RFC 6749, section 3.3).</summary>
    public static string Of(Scopes scopes) =>
        string.Join(' ', Known.Where(known => scopes.HasFlag(known.Scope)).Select(known => known.Name));

    /// <summary>The scope of a name; none for a name that is not ours.</summary>
    public static Scopes Named(string name) => Array.Find(Known, known => known.Name == name).Scope;

    /// <summary>The scopes of several names, those left out that are not ours.</summary>
    public static Scopes Named(IEnumerable<string> names) => names.Aggregate(Scopes.None, (scopes, name) => scopes | Named(name));
}
