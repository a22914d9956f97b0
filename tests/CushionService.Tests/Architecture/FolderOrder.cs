using System.Reflection;

namespace CushionService.Tests.Architecture;

/// <summary>The folders of one project in an order: each may use itself and those before it.</summary>
/// <param name="assembly">The compiled project.</param>
/// <param name="folders">The folders, first the one that uses no other. A name is the namespace without the project's own; the empty name
/// is the project's root. A folder within a listed one belongs to it, unless it is listed itself.</param>
internal sealed class FolderOrder(Assembly assembly, params string[] folders)
{
    private readonly string _root = assembly.GetName().Name!;

    /// <summary>The types of the project. The compiler's own have no namespace, or one of another root.</summary>
    public IEnumerable<Type> Types => assembly.GetTypes().Where(type => PathOf(type) is not null);

    /// <summary>The listed folder of a type; null when none is.</summary>
    public string? FolderOf(Type type)
    {
        string path = PathOf(type)!;
        return folders
            .Where(folder => path == folder || (folder.Length > 0 && path.StartsWith(folder + ".", StringComparison.Ordinal)))
            .MaxBy(folder => folder.Length);
    }

    /// <summary>Every use of one folder by another, as "user uses used".</summary>
    /// <param name="among">Which uses to list, by the folders of the user and of what it uses.</param>
    public IEnumerable<string> Uses(Func<string, string, bool> among) =>
        from user in Types
        from used in UsedTypes.Of(user)
        where used.Assembly == assembly && PathOf(used) is not null && among(FolderOf(user) ?? "", FolderOf(used) ?? "")
        select $"{user} uses {used}";

    /// <summary>Every use of a folder by one before it.</summary>
    public IEnumerable<string> UsesOfLaterFolders() => Uses((user, used) => Array.IndexOf(folders, used) > Array.IndexOf(folders, user));

    private string? PathOf(Type type) =>
        type.Namespace is not { } name ? null
        : name == _root ? ""
        : name.StartsWith(_root + ".", StringComparison.Ordinal) ? name[(_root.Length + 1)..]
        : null;
}
