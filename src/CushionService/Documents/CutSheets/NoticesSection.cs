using CushionService.Contract.Answers;
using CushionService.Documents.Sheets;
using CushionService.Engine.Messages;
using CushionService.Wording;

namespace CushionService.Documents.CutSheets;

/// <summary>What is unwise about the order, before anything is bought; what to beware of, before anything is used.</summary>
internal static class NoticesSection
{
    /// <summary>The warnings.</summary>
    public static IEnumerable<Block> Warnings(Job job) =>
        Notices(job, SheetTexts.Warnings, job.Quote.Warnings.Select(warning => Text(job, warning)), Tone.Notice);

    /// <summary>The cautions, each in a frame.</summary>
    public static IEnumerable<Block> Cautions(Job job) =>
        Notices(job, SheetTexts.Cautions, job.Quote.Cautions.Select(caution => caution.Text), Tone.Notice);

    /// <summary>The cautions as a list, which takes less room.</summary>
    public static IEnumerable<Block> ShortCautions(Job job) =>
        job.Quote.Cautions.Count == 0
            ? []
            :
            [
                new Heading(job.Say(SheetTexts.Cautions), 2),
                new Bullets([.. job.Quote.Cautions.Select(caution => (Run[])[new Run(caution.Text)])], false),
            ];

    // The answer names what has no price as a price would, for programs; a sheet as its lists do.
    private static string Text(Job job, ViolationAnswer warning) =>
        warning.Code == "unpriced" && job.Quote.Cost is { } cost
            ? job.Say(AnswerTexts.Unpriced(cost.Unpriced.Select(job.NameOf)))
            : warning.Detail;

    private static IEnumerable<Block> Notices(Job job, Message heading, IEnumerable<string> notices, Tone tone)
    {
        Paragraph[] all = [.. notices.Select(notice => new Paragraph(notice, tone))];
        return all.Length == 0 ? [] : [new Heading(job.Say(heading), 2), .. all];
    }
}
