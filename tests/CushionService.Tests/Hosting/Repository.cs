namespace CushionService.Tests.Hosting;

/// <summary>Files of the repository, found by walking up from the tests.</summary>
internal static class Repository
{
    public static string Root { get; } = FindRoot();

    public static string Read(params string[] path) => File.ReadAllText(Path.Combine([Root, .. path]));

    private static string FindRoot()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder!.FullName, "CushionService.sln")))
        {
            folder = folder.Parent;
        }

        return folder.FullName;
    }
}
