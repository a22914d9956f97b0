using System.Xml.Linq;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Languages;

/// <summary>Every sentence has its wording in every language: what a file of resources lacks would be read in English.</summary>
public sealed class MissingKeyTests
{
    private static readonly string[] Translations = ["de", "fr", "es"];

    public static TheoryData<string> Areas =>
        [
            .. Directory
                .EnumerateFiles(Path.Combine(Repository.Root, "src"), "*Texts.resx", SearchOption.AllDirectories)
                .Where(file => !file.Contains("/obj/", StringComparison.Ordinal) && !file.Contains("/bin/", StringComparison.Ordinal))
                .Select(file => Path.GetRelativePath(Repository.Root, file))
                .Order(StringComparer.Ordinal),
        ];

    [Theory]
    [MemberData(nameof(Areas))]
    public void No_key_is_missing(string area)
    {
        string[] keys = Keys(area);
        Assert.NotEmpty(keys);
        Assert.All(
            Translations,
            language =>
                Assert.Equal(keys, Keys(Path.ChangeExtension(area, $".{language}.resx").Replace("..", ".", StringComparison.Ordinal)))
        );
    }

    private static string[] Keys(string file)
    {
        string path = Path.Combine(Repository.Root, file);
        Assert.True(File.Exists(path), $"There is no {file}.");
        return
        [
            .. XDocument.Load(path).Root!.Elements("data").Select(data => (string)data.Attribute("name")!).Order(StringComparer.Ordinal),
        ];
    }
}
