using CushionService.Nesting.Audit;
using CushionService.Nesting.Solving;
using CushionService.Tests.Architecture;

namespace CushionService.Nesting.Tests.Architecture;

/// <summary>The folders of the nesting form a list: each uses those before it, and none those after it. Read from the compiled code.</summary>
public sealed class FolderFacts
{
    private const string Root = "CushionService.Nesting";

    /// <summary>From plain values to the entry. A folder's name is its namespace without the root.</summary>
    private static readonly string[] Folders =
    [
        "",
        "Search",
        "Rectangles.Skylines",
        "Rectangles.Repeats",
        "Rectangles.Sheets",
        "Rectangles.Beams",
        "Rectangles.Proofs",
        "Rectangles.PerfectBoxes",
        "Rectangles",
        "Outlines.NoFit",
        "Outlines.Placing",
        "Outlines.Bounding",
        "Outlines.Searching",
        "Outlines",
        "Audit",
        "Solving",
    ];

    private static readonly Type[] Types =
    [
        .. typeof(Nester).Assembly.GetTypes().Where(type => type.Namespace?.StartsWith(Root, StringComparison.Ordinal) == true),
    ];

    [Fact]
    public void Every_type_lies_in_a_listed_folder() => Assert.All(Types, type => Assert.Contains(Folder(type), Folders));

    [Fact]
    public void A_folder_uses_the_folders_before_it_alone() =>
        Assert.Empty(Uses((user, used) => Array.IndexOf(Folders, used) > Array.IndexOf(Folders, user)));

    [Fact]
    public void The_audit_uses_plain_values_alone() =>
        Assert.Empty(
            from user in Types
            where Folder(user) == "Audit"
            from used in UsedTypes.Of(user)
            where used.Assembly == user.Assembly && Folder(used) is not ("" or "Audit")
            select $"{user} uses {used}"
        );

    [Fact]
    public void What_a_method_s_body_calls_is_seen()
    {
        Assert.Contains(typeof(StripAudit), UsedTypes.Of(typeof(Nester)));
        Assert.NotEmpty(Uses((user, used) => user == "Solving" && used == "Rectangles"));
    }

    private static IEnumerable<string> Uses(Func<string, string, bool> wrongly) =>
        from user in Types
        from used in UsedTypes.Of(user)
        where used.Assembly == user.Assembly && wrongly(Folder(user), Folder(used))
        select $"{user} uses {used}";

    // The compiler's own types have no namespace, or one outside ours.
    private static string Folder(Type type) =>
        type.Namespace is { } name && name.StartsWith(Root, StringComparison.Ordinal) ? name[Root.Length..].TrimStart('.') : "";
}
