using System.Text.RegularExpressions;
using CushionService.Documents.Pictures;
using CushionService.Engine.Messages;
using CushionService.Engine.Quoting;

namespace CushionService.Documents.CutSheets;

/// <summary>Pictures of the cushions of a job, as SVG elements with a view box from (0, 0) whose ids are unique in a document.</summary>
/// <param name="Cushion">The finished cushion of an id; null for no picture.</param>
/// <param name="Step">What a step looks like; null where there is nothing to see.</param>
internal sealed record JobPictures(Func<string, string?> Cushion, Func<JobStep, string?> Step)
{
    private static readonly Regex Styles = new(" style=\"[^\"]*\"", RegexOptions.CultureInvariant);

    /// <summary>No pictures.</summary>
    public static JobPictures None { get; } = new(static _ => null, static _ => null);

    /// <summary>The pictures of a quote's cushions and steps.</summary>
    /// <param name="quote">The quote.</param>
    /// <param name="language">The language of their titles.</param>
    public static JobPictures Of(Quote quote, Language language)
    {
        return new JobPictures(Draw, DrawStep);

        string? Draw(string id)
        {
            int number = 0;
            while (number < quote.Drafting.Order.Cushions.Length && quote.Drafting.Order.Cushions[number].Id != id)
            {
                number++;
            }

            return number < quote.Drafting.Order.Cushions.Length
                ? Plain(CushionPicture.Write(quote, number, language, FormattableString.Invariant($"picture-{number + 1}")))
                : null;
        }

        string? DrawStep(JobStep step) =>
            CushionPicture.WriteStep(quote, step.Number - 1, language, FormattableString.Invariant($"step-{step.Number}"), step.Key)
                is { } picture
                ? Plain(picture)
                : null;
    }

    // A page that shows the document may forbid styles on elements; every colour is an attribute as well.
    private static string Plain(string picture) => Styles.Replace(picture, "");
}
