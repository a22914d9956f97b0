namespace CushionService.PriceBooks;

/// <summary>Checks the price books of a folder without starting the service, for a shop that keeps them in version
/// control.</summary>
internal static class PriceBookCheck
{
    /// <summary>The option of the command line; the folder comes after it.</summary>
    public const string Option = "--check-prices";

    /// <summary>Reads every book, and writes each fault on a line of its own, as compilers do: file, line, reason.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="output">Where to.</param>
    /// <returns>The exit code: 0 when there is at least one book and none has faults, else 1.</returns>
    public static int Run(string folder, TextWriter output)
    {
        PriceBookStore books = PriceBookStore.Of(folder);
        IReadOnlyList<PriceBookError> errors = books.Reload();
        foreach (PriceBookError error in errors)
        {
            output.WriteLine($"{error.File}:{error.Line}: {error.Reason}");
        }

        if (errors.Count == 0)
        {
            output.WriteLine(
                books.Count switch
                {
                    0 => $"There are no price books in {folder}.",
                    1 => "1 price book without faults.",
                    _ => $"{books.Count} price books without faults.",
                }
            );
        }

        return errors.Count == 0 && books.Count > 0 ? 0 : 1;
    }
}
