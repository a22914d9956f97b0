namespace CushionService.Widget;

/// <summary>Writes the files of the widget into a folder: to keep a build for the pages that name it, and for the package.</summary>
internal static class WidgetFiles
{
    /// <summary>The argument of the program, before the folder.</summary>
    public const string Option = "--write-widget";

    /// <summary>Writes the files. One that is there already has the same content under a build's own name, and is written again.</summary>
    /// <param name="folder">The folder, which is made.</param>
    /// <param name="widget">The build.</param>
    /// <returns>0, for the exit code of the program.</returns>
    public static int Write(string folder, WidgetModule widget)
    {
        foreach (WidgetFile file in widget.Files)
        {
            string path = Path.Combine(folder, file.Name);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllBytes(path, [.. file.Bytes]);
        }

        return 0;
    }
}
