namespace CushionService.PriceBooks;

/// <summary>Puts the price books of a folder on the shelf: the one that <c>PriceBooks:Folder</c> names.</summary>
internal static class PriceBookSetup
{
    public static void AddPriceBooks(this WebApplicationBuilder builder)
    {
        if (builder.Configuration["PriceBooks:Folder"] is not { Length: > 0 } configured)
        {
            builder.Services.AddSingleton<IPriceBooks>(PriceBookShelf.Empty);
            return;
        }

        string folder = Path.GetFullPath(configured);
        PriceBookShelf shelf = PriceBookShelf.Of(folder);
        // With a book missing, a start would serve quotes without prices.
        if (shelf.Reload() is { Count: > 0 } faults)
        {
            throw new InvalidDataException(string.Join(Environment.NewLine, ["Price books have faults:", .. faults]));
        }

        builder.Services.AddSingleton<IPriceBooks>(shelf);
        builder.Services.AddHostedService(services => new PriceBookWatch(
            shelf,
            folder,
            services.GetRequiredService<ILogger<PriceBookWatch>>()
        ));
    }
}
