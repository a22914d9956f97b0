namespace CushionService.Documents.Sheets;

/// <summary>A paragraph.</summary>
/// <param name="Runs">Its words.</param>
/// <param name="Tone">How loud it is.</param>
internal sealed record Paragraph(IReadOnlyList<Run> Runs, Tone Tone = Tone.Body) : Block
{
    /// <summary>A paragraph of plain words.</summary>
    public Paragraph(string text, Tone tone = Tone.Body)
        : this([new Run(text)], tone) { }
}
