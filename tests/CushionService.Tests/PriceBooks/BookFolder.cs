using CushionService.PriceBooks;
using CushionService.Tests.Hosting;
using Microsoft.Extensions.DependencyInjection;

namespace CushionService.Tests.PriceBooks;

/// <summary>A folder of price books that is gone afterwards.</summary>
internal sealed class BookFolder : IDisposable
{
    public const string Nook = """
        {
          "version": "1",
          "currency": "USD",
          "prices": [
            { "item": "canvas", "amount": "20.00", "per": "yd", "step": 0.25, "minimum": 1 },
            { "item": "zipper", "amount": "2.00", "per": "each" },
            { "item": "thread", "amount": "0.02", "per": "yd" }
          ],
          "costing": { "markup": 0.5 }
        }
        """;

    public BookFolder(params (string Name, string Text)[] books)
    {
        foreach ((string name, string text) in books)
        {
            Write(name, text);
        }

        Shelf = PriceBookShelf.Of(Location);
        Faults = Shelf.Reload();
    }

    public string Location { get; } = Directory.CreateTempSubdirectory("price-books-").FullName;

    public PriceBookShelf Shelf { get; }

    /// <summary>The faults of the first reading.</summary>
    public IReadOnlyList<PriceBookFault> Faults { get; }

    /// <summary>The shelf of a folder whose books have no faults.</summary>
    public static PriceBookShelf ShelfOf(string folder)
    {
        PriceBookShelf shelf = PriceBookShelf.Of(folder);
        Assert.Empty(shelf.Reload());
        return shelf;
    }

    /// <summary>Replaces a book as a whole, as a careful hand would: the new file takes the old one's place in one step.</summary>
    public void Write(string name, string text)
    {
        string draft = Path.Combine(Location, $"{name}.draft");
        File.WriteAllText(draft, text);
        File.Move(draft, Path.Combine(Location, $"{name}.json"), overwrite: true);
    }

    /// <summary>A service with these books, in which a call waits for its turn however long that takes.</summary>
    public RunningService Serve() => new(services => services.AddSingleton<IPriceBooks>(Shelf));

    public void Dispose() => Directory.Delete(Location, recursive: true);
}
