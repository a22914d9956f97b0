namespace CushionService.PriceBooks;

/// <summary>Registers the price books of the folder that <c>PriceBooks:Folder</c> names.</summary>
internal static class PriceBookSetup
{
    /// <summary>Reads the books, and adds them with their watcher. Without a folder there are no price books.</summary>
    /// <exception cref="InvalidDataException">A book has errors; names each with its file and line. With the book
    /// missing, the service would answer quotes without prices.</exception>
    public static void AddPriceBooks(this WebApplicationBuilder builder)
    {
        if (builder.Configuration["PriceBooks:Folder"] is not { Length: > 0 } configured)
        {
            builder.Services.AddSingleton(PriceBookStore.Empty);
            builder.Services.AddSingleton<IPriceBooks>(PriceBookStore.Empty);
            return;
        }

        string folder = Path.GetFullPath(configured);
        PriceBookStore books = PriceBookStore.Of(folder);
        if (books.Reload() is { Count: > 0 } errors)
        {
            throw new InvalidDataException(string.Join(Environment.NewLine, ["Price books have faults:", .. errors]));
        }

        builder.Services.AddSingleton(books);
        builder.Services.AddSingleton<IPriceBooks>(books);
        builder.Services.AddHostedService(services => new PriceBookWatcher(
            books,
            folder,
            services.GetRequiredService<ILogger<PriceBookWatcher>>()
        ));
    }
}
