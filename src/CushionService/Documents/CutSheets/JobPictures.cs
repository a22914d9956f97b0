using System.Text.RegularExpressions;
using CushionService.Documents.Pictures;
using CushionService.Engine.Messages;
using CushionService.Engine.Quoting;

namespace CushionService.Documents.CutSheets;

/// <summary>Pictures of the cushions of a job, as SVG elements with a view box from (0, 0) whose ids are unique in a document.</summary>
/// <param name="Cushion">The finished cushion of an id; null for no picture.</param>
/// <param name="Step">What a step looks like; null where there is nothing to see.</param>
/// <param name="Drawn">How many characters the pictures have that were asked for so far. Beyond what a document may have, no more are
/// drawn: it will be refused.</param>
internal sealed record JobPictures(Func<string, string?> Cushion, Func<JobStep, string?> Step, Func<long> Drawn)
{
    private static readonly Regex Styles = new(" style=\"[^\"]*\"", RegexOptions.CultureInvariant);

    /// <summary>No pictures.</summary>
    public static JobPictures None { get; } = new(static _ => null, static _ => null, static () => 0);

    /// <summary>The pictures of a quote's cushions and steps.</summary>
    /// <param name="quote">The quote.</param>
    /// <param name="language">The language of their titles.</param>
    /// <param name="cancellation">Gives up between two pictures.</param>
    /// <exception cref="OperationCanceledException">Of a picture: the caller cancelled.</exception>
    public static JobPictures Of(Quote quote, Language language, CancellationToken cancellation)
    {
        var sources = new StepSources(quote);
        long drawn = 0;
        return new JobPictures(Cushion, Step, () => drawn);

        string? Cushion(string id) =>
            sources.NumberOf(id) is { } number
                ? Kept(() => CushionPicture.Write(quote, number, language, FormattableString.Invariant($"picture-{number + 1}")))
                : null;

        string? Step(JobStep step) =>
            Kept(() =>
                CushionPicture.WriteStep(
                    quote,
                    sources,
                    step.Number - 1,
                    language,
                    FormattableString.Invariant($"step-{step.Number}"),
                    step.Key
                )
            );

        string? Kept(Func<string?> draw)
        {
            cancellation.ThrowIfCancellationRequested();
            string? picture = drawn <= PrintedDocument.MostBytes ? draw() : null;
            drawn += picture?.Length ?? 0;
            return picture is null ? null : Plain(picture);
        }
    }

    // A page that shows the document may forbid styles on elements; every colour is an attribute as well.
    private static string Plain(string picture) => Styles.Replace(picture, "");
}
