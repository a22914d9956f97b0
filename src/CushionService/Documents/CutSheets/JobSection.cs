using CushionService.Contract.Answers;
using CushionService.Documents.Sheets;
using CushionService.Engine.Messages;

namespace CushionService.Documents.CutSheets;

/// <summary>Who the work is for and when, as the order says.</summary>
internal static class JobSection
{
    /// <summary>A line for each that the order has.</summary>
    public static IEnumerable<Block> Of(Job job)
    {
        QuoteAnswer quote = job.Quote;
        (Message Name, string? Text)[] facts =
        [
            (SheetTexts.Customer, quote.Customer),
            (SheetTexts.Due, job.Due),
            (SheetTexts.Note, quote.Note),
        ];
        return facts.Where(fact => fact.Text is { Length: > 0 }).Select(fact => Line(job, fact.Name, fact.Text!));
    }

    /// <summary>A name and what it is, in a line.</summary>
    public static Paragraph Line(Job job, Message name, string text) => new([new Run(job.Say(SheetTexts.Head(name))), new Run(text, true)]);
}
