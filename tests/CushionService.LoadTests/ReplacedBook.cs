namespace CushionService.LoadTests;

/// <summary>A price book in a folder of its own, in versions that can be told apart by every price of theirs.</summary>
internal sealed class ReplacedBook : IDisposable
{
    private int _version;

    public ReplacedBook() => Replace();

    public string Folder { get; } = Directory.CreateTempSubdirectory("price-books-").FullName;

    /// <summary>Quotes two fabrics by the book.</summary>
    public static string Order { get; } =
        """
            {"units":"in","effort":"quick","priceBook":"nook","pieces":[{"id":"runner","fabric":"canvas","width":20,"length":30},
              {"id":"lining","fabric":"calico","width":20,"length":30}],"fabrics":[{"id":"canvas","width":54},{"id":"calico","width":54}]}
            """;

    /// <summary>Whether the prices of an answer are all those of the version that it names.</summary>
    public static bool IsWhole(string version, IEnumerable<string> unitPrices) =>
        unitPrices.SequenceEqual([$"10.{version}", $"5.{version}"]);

    /// <summary>Puts the next version instead of the one before; one in three is broken.</summary>
    public void Replace()
    {
        _version = _version % 99 + 1;
        string draft = Path.Combine(Folder, "nook.draft");
        File.WriteAllText(
            draft,
            _version % 3 == 0
                ? "{ broken"
                : $$"""
                {"version":"{{_version:00}}","currency":"USD","prices":[{"item":"canvas","amount":"10.{{_version:00}}","per":"yd"},
                  {"item":"calico","amount":"5.{{_version:00}}","per":"yd"}]}
                """
        );
        File.Move(draft, Path.Combine(Folder, "nook.json"), overwrite: true);
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
