using CushionService.Contract.Answers;
using CushionService.Desk;
using CushionService.Documents.CutSheets;
using CushionService.Documents.Sheets;
using CushionService.Engine.Messages;
using CushionService.Engine.Quoting;
using CushionService.Tests.Documents.TrueSize;

namespace CushionService.Tests.Documents.Sheets;

/// <summary>Documents of orders, as the service makes them.</summary>
internal static class Printed
{
    /// <summary>The demonstration orders that are printed, by their names.</summary>
    public static TheoryData<string> Demos =>
        [
            .. Directory
                .GetFiles(Path.Combine(AppContext.BaseDirectory, "Demo"), "*.json")
                .Select(file => Path.GetFileNameWithoutExtension(file))
                .Where(name => name != "priced-by-book")
                .Order(StringComparer.Ordinal),
        ];

    /// <summary>A demonstration order as a job.</summary>
    public static Job Demo(string name, Language language = Language.English) =>
        Of(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Demo", $"{name}.json")), language);

    /// <summary>An order as a job, with all that its documents show.</summary>
    public static Job Of(string order, Language language = Language.English)
    {
        CheckedOrder found = Drafted.Check(order) with { Language = language };
        (Quote quote, QuoteAnswer answer) = Purposes.Quoted(found, CancellationToken.None);
        return Job.Of(answer, quote, found.Order, language, JobPictures.Of(quote, language, CancellationToken.None));
    }

    /// <summary>How many pages a sheet takes.</summary>
    public static int Pages(Sheet sheet) => SheetPages.Of(sheet, CancellationToken.None).Count;

    /// <summary>A sheet as HTML.</summary>
    public static string Html(Sheet sheet) => SheetHtml.Write(sheet, CancellationToken.None);

    /// <summary>A sheet as a PDF.</summary>
    public static byte[] Pdf(Sheet sheet) => SheetDocument.Write(sheet, true, CancellationToken.None).Bytes;
}
