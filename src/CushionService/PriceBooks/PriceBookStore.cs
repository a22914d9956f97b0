using System.Collections.Immutable;
using CushionService.Engine.Specifications.Pricing;

namespace CushionService.PriceBooks;

/// <summary>The price books of a folder, in memory. Readers see one whole version of each. A version with errors is
/// refused, and the one before it stays.</summary>
public sealed class PriceBookStore : IPriceBooks
{
    private readonly string? _folder;
    private readonly Lock _reloading = new();
    private volatile ImmutableDictionary<string, PriceBookSpecification> _books = ImmutableDictionary<string, PriceBookSpecification>.Empty;

    private PriceBookStore(string? folder) => _folder = folder;

    /// <summary>A store without books.</summary>
    public static PriceBookStore Empty { get; } = new(null);

    /// <summary>A store of a folder's books, none of them read yet.</summary>
    internal static PriceBookStore Of(string folder) => new(folder);

    /// <inheritdoc />
    public PriceBookSpecification? Find(string name) => _books.GetValueOrDefault(name);

    /// <summary>Reads every file of the folder anew. What changed takes effect at once and together; a book whose file
    /// is gone is gone.</summary>
    /// <returns>Why files were refused; empty when every file was read.</returns>
    /// <exception cref="DirectoryNotFoundException">There is no such folder.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder, or a file of it, may not be read.</exception>
    internal IReadOnlyList<PriceBookError> Reload()
    {
        lock (_reloading)
        {
            List<PriceBookError> errors = [];
            ImmutableDictionary<string, PriceBookSpecification>.Builder books = ImmutableDictionary.CreateBuilder<
                string,
                PriceBookSpecification
            >();
            foreach (string file in Directory.EnumerateFiles(_folder!, "*.json").Order(StringComparer.Ordinal))
            {
                string name = Path.GetFileNameWithoutExtension(file);
                (PriceBookSpecification? book, ImmutableArray<PriceBookError> found) = Read(name, file);
                errors.AddRange(found);
                // A version with errors leaves the one before it in force.
                if ((book ?? Find(name)) is { } current)
                {
                    books[name] = current;
                }
            }

            _books = books.ToImmutable();
            return errors;
        }
    }

    // A file that is being replaced may be gone, or locked, for a moment: that is an error of this reading alone.
    private static (PriceBookSpecification? Book, ImmutableArray<PriceBookError> Errors) Read(string name, string file)
    {
        try
        {
            return PriceBookReader.Read(name, Path.GetFileName(file), File.ReadAllBytes(file));
        }
        catch (IOException exception)
        {
            return (null, [new PriceBookError(Path.GetFileName(file), 1, exception.Message)]);
        }
    }
}
