using System.Diagnostics;
using System.Globalization;

namespace CushionService.Tests.Documents.TrueSize;

/// <summary>Pages of a PDF as an independent reader shows them: poppler's pdftoppm, where it is installed.</summary>
internal static class Poppler
{
    private static readonly bool IsInstalled = Environment
        .GetEnvironmentVariable("PATH")!
        .Split(':')
        .Any(folder => File.Exists($"{folder}/pdftoppm"));

    /// <summary>Skips the test where the reader is not installed, and says so.</summary>
    public static void IsNeeded() => Skip.IfNot(IsInstalled, "pdftoppm is not installed (Debian's poppler-utils).");

    /// <summary>A page in greys.</summary>
    /// <param name="pdf">The document.</param>
    /// <param name="page">From 1.</param>
    /// <param name="dots">In an inch.</param>
    public static GreyPage Page(byte[] pdf, int page, int dots)
    {
        string file = Path.GetTempFileName();
        File.WriteAllBytes(file, pdf);
        try
        {
            string number = page.ToString(CultureInfo.InvariantCulture);
            byte[] grey = Run("pdftoppm", "-gray", "-r", dots.ToString(CultureInfo.InvariantCulture), "-f", number, "-l", number, file);
            return GreyPage.Read(grey, dots);
        }
        finally
        {
            File.Delete(file);
        }
    }

    /// <summary>The text of a document.</summary>
    public static string Text(byte[] pdf)
    {
        string file = Path.GetTempFileName();
        File.WriteAllBytes(file, pdf);
        try
        {
            return System.Text.Encoding.UTF8.GetString(Run("pdftotext", file, "-"));
        }
        finally
        {
            File.Delete(file);
        }
    }

    private static byte[] Run(string program, params string[] arguments)
    {
        using Process process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true })!;
        using var output = new MemoryStream();
        process.StandardOutput.BaseStream.CopyTo(output);
        process.WaitForExit();
        Assert.Equal(0, process.ExitCode);
        return output.ToArray();
    }
}
