namespace CushionService.Contract;

/// <summary>The members of an answer that a caller asks for, as names within names: <c>cost.total</c> is the total within
/// the cost. A member of a list is asked for in every entry of it.</summary>
internal sealed class FieldTree
{
    private readonly Dictionary<string, FieldTree> _within = new(StringComparer.Ordinal);

    /// <summary>Whether all of the value is asked for.</summary>
    public bool IsWhole { get; private set; }

    /// <summary>What is asked for of a member; null when it is not asked for.</summary>
    public FieldTree? this[string name] => _within.GetValueOrDefault(name);

    /// <summary>Adds a path. A value that is asked for as a whole stays whole.</summary>
    /// <param name="names">The names, from the answer inwards.</param>
    public void Add(ReadOnlySpan<string> names)
    {
        FieldTree tree = this;
        foreach (string name in names)
        {
            if (!tree._within.TryGetValue(name, out FieldTree? inner))
            {
                tree._within[name] = inner = new FieldTree();
            }

            tree = inner;
        }

        tree.IsWhole = true;
    }

    /// <summary>The paths, sorted: the same for the same fields, however they were asked for.</summary>
    public IEnumerable<string> Paths() =>
        IsWhole
            ? [""]
            : _within
                .OrderBy(member => member.Key, StringComparer.Ordinal)
                .SelectMany(member => member.Value.Paths().Select(path => path.Length == 0 ? member.Key : $"{member.Key}.{path}"));
}
