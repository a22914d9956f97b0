using CushionService.Tests.Hosting;

namespace CushionService.Tests.Pages;

/// <summary>
/// A part of a document that is made by a test. The test compares it with what it makes; with <c>CUSHION_WRITE=1</c> in the environment it
/// writes the part instead.
/// </summary>
internal static class WrittenPart
{
    private static readonly bool Writes = Environment.GetEnvironmentVariable("CUSHION_WRITE") == "1";

    /// <summary>The part between the comments <c>made: NAME</c> and <c>end of NAME</c>.</summary>
    public static void IsUpToDate(string document, string name, string made)
    {
        string start = $"<!-- made: {name} -->\n",
            end = $"<!-- end of {name} -->";
        Between(document, start, end, made);
    }

    /// <summary>The part between two texts, each of which is in the document.</summary>
    public static void Between(string document, string start, string end, string made)
    {
        string text = Repository.Read(document);
        (int from, int to) = Place(document, text, start, end);
        if (Writes)
        {
            File.WriteAllText(Path.Combine(Repository.Root, document), text[..from] + made + text[to..]);
        }
        else
        {
            Assert.Equal(made, text[from..to]);
        }
    }

    /// <summary>A whole file.</summary>
    public static void WholeIsUpToDate(string document, string made)
    {
        string path = Path.Combine(Repository.Root, document);
        if (Writes)
        {
            File.WriteAllText(path, made);
        }
        else
        {
            Assert.Equal(made, File.Exists(path) ? File.ReadAllText(path) : "");
        }
    }

    /// <summary>What is written between two texts.</summary>
    public static string Read(string document, string start, string end)
    {
        string text = Repository.Read(document);
        (int from, int to) = Place(document, text, start, end);
        return text[from..to];
    }

    private static (int From, int To) Place(string document, string text, string start, string end)
    {
        int at = text.IndexOf(start, StringComparison.Ordinal);
        Assert.True(at >= 0, $"{document} has no \"{start.Trim()}\".");
        int from = at + start.Length,
            to = text.IndexOf(end, from, StringComparison.Ordinal);
        Assert.True(to >= 0, $"{document} has no \"{end.Trim()}\" after \"{start.Trim()}\".");
        return (from, to);
    }
}
