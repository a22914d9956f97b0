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
          "stocks": [{ "id": "zipper", "kind": "zipper", "length": 14 }],
          "costing": { "markup": 0.5 }
        }
        """;

    public BookFolder(params (string Name, string Text)[] books)
    {
        foreach ((string name, string text) in books)
        {
            Write(name, text);
        }

        Store = PriceBookStore.Of(Location);
        Faults = Store.Reload();
    }

    public string Location { get; } = Directory.CreateTempSubdirectory("price-books-").FullName;

    public PriceBookStore Store { get; }

    /// <summary>The faults of the first reading.</summary>
    public IReadOnlyList<PriceBookError> Faults { get; }

    /// <summary>The store of a folder whose books have no faults.</summary>
    public static PriceBookStore StoreOf(string folder)
    {
        PriceBookStore store = PriceBookStore.Of(folder);
        Assert.Empty(store.Reload());
        return store;
    }

    /// <summary>Replaces a book as a whole, as a careful hand would: the new file takes the old one's place in one step.</summary>
    public void Write(string name, string text)
    {
        string draft = Path.Combine(Location, $"{name}.draft");
        File.WriteAllText(draft, text);
        File.Move(draft, Path.Combine(Location, $"{name}.json"), overwrite: true);
    }

    /// <summary>A service with these books, in which a call waits for its turn however long that takes.</summary>
    public RunningService Serve() => new(services => services.AddSingleton<IPriceBooks>(Store));

    public void Dispose() => Directory.Delete(Location, recursive: true);
}
