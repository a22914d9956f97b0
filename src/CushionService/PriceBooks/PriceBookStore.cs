using System.Collections.Immutable;
using System.Text.RegularExpressions;
using CushionService.Contract.Orders;
using CushionService.Engine.Specifications.Pricing;

namespace CushionService.PriceBooks;

/// <summary>The price books of a folder, in memory. Readers see one whole version of each. A version with errors is
/// refused, and the one before it stays.</summary>
public sealed class PriceBookStore : IPriceBooks
{
    // A book of 20 000 prices has about 4 MiB.
    private const long MostBytes = 32 << 20;

    private readonly string? _folder;
    private readonly Lock _reloading = new();
    private volatile ImmutableDictionary<string, PriceBookSpecification> _books = ImmutableDictionary<string, PriceBookSpecification>.Empty;

    private volatile IReadOnlyList<PriceBookError> _errors = [];

    private PriceBookStore(string? folder) => _folder = folder;

    /// <summary>A store without books.</summary>
    public static PriceBookStore Empty { get; } = new(null);

    /// <summary>A store of a folder's books, none of them read yet.</summary>
    internal static PriceBookStore Of(string folder) => new(folder);

    /// <inheritdoc />
    public PriceBookSpecification? Find(string name) => _books.GetValueOrDefault(name);

    /// <summary>Why files were refused when the folder was last read.</summary>
    internal IReadOnlyList<PriceBookError> Errors => _errors;

    /// <summary>How many books there are.</summary>
    internal int Count => _books.Count;

    /// <summary>The files of which a version before the newest is in use.</summary>
    internal IEnumerable<string> Old =>
        _errors.Select(error => error.File).Distinct().Where(file => Find(Path.GetFileNameWithoutExtension(file)) is not null);

    /// <summary>Reads every file of the folder anew. What changed takes effect at once and together; a book whose file
    /// is gone is gone.</summary>
    /// <returns>Why files were refused; empty when every file was read. A folder that cannot be read is one error, and all
    /// books stay.</returns>
    internal IReadOnlyList<PriceBookError> Reload()
    {
        lock (_reloading)
        {
            string[] files;
            try
            {
                files = [.. Directory.EnumerateFiles(_folder!, "*.json").Order(StringComparer.Ordinal)];
            }
            catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
            {
                return _errors = [new PriceBookError(_folder!, 1, $"The folder cannot be read: {exception.Message}")];
            }

            List<PriceBookError> errors = [];
            ImmutableDictionary<string, PriceBookSpecification>.Builder books = ImmutableDictionary.CreateBuilder<
                string,
                PriceBookSpecification
            >();
            foreach (string file in files)
            {
                string name = Path.GetFileNameWithoutExtension(file);
                (PriceBookSpecification? book, ImmutableArray<PriceBookError> found) = CanBeNamed(name)
                    ? Read(name, file)
                    : (
                        null,
                        [new PriceBookError(Shown(file), 1, "No order can name this book: a name has 1 to 64 letters, digits, . - and _.")]
                    );
                errors.AddRange(found);
                // A version with errors leaves the one before it in force.
                if ((book ?? Find(name)) is { } current)
                {
                    books[name] = current;
                }
            }

            _books = books.ToImmutable();
            return _errors = errors;
        }
    }

    // As an order's field priceBook has it.
    private static bool CanBeNamed(string name) => Regex.IsMatch(name, Identifier.Pattern) && !name.EndsWith('\n');

    // On one line, whatever the name.
    private static string Shown(string file) => string.Concat(Path.GetFileName(file).Select(sign => char.IsControl(sign) ? '?' : sign));

    // Whatever a file does to the reader is an error of that file alone. One that is being replaced may be gone, or locked,
    // for a moment.
    private static (PriceBookSpecification? Book, ImmutableArray<PriceBookError> Errors) Read(string name, string file)
    {
        string shown = Shown(file);
        try
        {
            // Books may be links, as a mounted ConfigMap has them. What has no length is empty, or is a pipe or a device, which might
            // never end: it is not opened.
            FileInfo target = new(file);
            long length = target.ResolveLinkTarget(returnFinalTarget: true) is FileInfo linked ? linked.Length : target.Length;
            return length == 0 ? (null, [new PriceBookError(shown, 1, "The file is empty, or no regular file.")])
                : length > MostBytes ? (null, [new PriceBookError(shown, 1, $"A price book may have {MostBytes >> 20} MiB at most.")])
                : PriceBookReader.Read(name, shown, File.ReadAllBytes(file));
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            return (null, [new PriceBookError(shown, 1, $"The file cannot be read: {exception.Message}")]);
        }
        catch (OutOfMemoryException)
        {
            // What was read of it is garbage by now: there is room again for all else.
            return (null, [new PriceBookError(shown, 1, "There is no memory for a book of this size: raise the limit, or part the book.")]);
        }
        catch (Exception exception)
        {
            return (null, [new PriceBookError(shown, 1, $"The book cannot be read: {exception.GetType().Name}, {exception.Message}")]);
        }
    }
}
