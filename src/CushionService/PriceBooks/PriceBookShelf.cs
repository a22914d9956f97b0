using System.Collections.Immutable;
using CushionService.Engine.Specifications.Pricing;

namespace CushionService.PriceBooks;

/// <summary>The price books of a folder. Readers see one whole version of each; a version with faults is refused, and the one before it
/// stays.</summary>
public sealed class PriceBookShelf : IPriceBooks
{
    private readonly string? _folder;
    private readonly Lock _reloading = new();
    private volatile ImmutableDictionary<string, PriceBookSpecification> _books = ImmutableDictionary<string, PriceBookSpecification>.Empty;

    private PriceBookShelf(string? folder) => _folder = folder;

    /// <summary>A shelf without books.</summary>
    public static PriceBookShelf Empty { get; } = new(null);

    /// <summary>A shelf of a folder's books, none of them read yet.</summary>
    internal static PriceBookShelf Of(string folder) => new(folder);

    /// <inheritdoc />
    public PriceBookSpecification? Find(string name) => _books.GetValueOrDefault(name);

    /// <summary>Reads every file of the folder anew. What changed takes effect at once and together; a book whose file is gone is
    /// gone.</summary>
    /// <returns>The faults for which files were refused.</returns>
    internal IReadOnlyList<PriceBookFault> Reload()
    {
        lock (_reloading)
        {
            List<PriceBookFault> faults = [];
            ImmutableDictionary<string, PriceBookSpecification>.Builder books = ImmutableDictionary.CreateBuilder<
                string,
                PriceBookSpecification
            >();
            foreach (string file in Directory.EnumerateFiles(_folder!, "*.json").Order(StringComparer.Ordinal))
            {
                string name = Path.GetFileNameWithoutExtension(file);
                (PriceBookSpecification? book, ImmutableArray<PriceBookFault> found) = Read(name, file);
                faults.AddRange(found);
                if ((book ?? Find(name)) is { } standing)
                {
                    books[name] = standing;
                }
            }

            _books = books.ToImmutable();
            return faults;
        }
    }

    private static (PriceBookSpecification? Book, ImmutableArray<PriceBookFault> Faults) Read(string name, string file)
    {
        try
        {
            return PriceBookReader.Read(name, Path.GetFileName(file), File.ReadAllBytes(file));
        }
        catch (IOException fault)
        {
            return (null, [new PriceBookFault(Path.GetFileName(file), 1, fault.Message)]);
        }
    }
}
