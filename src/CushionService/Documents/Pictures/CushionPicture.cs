using System.Collections.Immutable;
using System.Globalization;
using CushionService.Engine.Layouts;
using CushionService.Engine.Messages;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Nesting;

namespace CushionService.Documents.Pictures;

/// <summary>The picture of a cushion: one SVG element, drawn from the cushion's own pattern, to be in a page or in a document.</summary>
/// <remarks>It has no size of its own, so that it fills the width it is given, and nothing outside itself. Its colours may be set by CSS
/// variables: <c>--cushion-fabric-1</c> for the order's first fabric and so on, <c>--cushion-line</c>, <c>--cushion-print</c>,
/// <c>--cushion-shade</c>, <c>--cushion-light</c>, <c>--cushion-webbing</c>, <c>--cushion-accent</c> and <c>--cushion-quiet</c>.</remarks>
internal static class CushionPicture
{
    /// <summary>The most bytes that a picture is drawn to; what is finer is left out until it has no more.</summary>
    public const int UsualBytes = 30_000;

    /// <summary>The most bytes that a call answers with.</summary>
    public const int MostBytes = 100_000;

    // Prints and hatches are drawn ever more simply.
    private const int Details = 4;

    // Of the ids that a refusal lists.
    private const int MostListed = 20;

    /// <summary>The picture of a cushion, with the layouts that it needs.</summary>
    /// <param name="drafting">A drafting without violations.</param>
    /// <param name="cushion">The cushion's id; null where the order has one.</param>
    /// <param name="effort">How hard to search for layouts.</param>
    /// <param name="language">The language of its title and description.</param>
    /// <param name="view">What is shown.</param>
    /// <param name="cancellation">Gives up the search.</param>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    public static PrintedDocument Of(
        Drafting drafting,
        string? cushion,
        Effort effort,
        Language language,
        PictureView view,
        CancellationToken cancellation
    )
    {
        string[] ids = [.. drafting.Order.Cushions.Select(one => one.Id)];
        int number = cushion is null && ids.Length == 1 ? 0 : Array.IndexOf(ids, cushion);
        return ids.Length == 0 ? PrintedDocument.Lacks(PictureTexts.NoCushion)
            : number < 0 ? PrintedDocument.Lacks(PictureTexts.WhichCushion([.. ids.Take(MostListed)], ids[0]))
            : Bounded(Write(drafting, number, PictureSource.LayOut(drafting, number, effort, cancellation), language, view));
    }

    private static PrintedDocument Bounded(string picture) =>
        System.Text.Encoding.UTF8.GetByteCount(picture) is var size && size <= MostBytes
            ? PrintedDocument.Of(picture)
            : PrintedDocument.Refuse(new Violation("", "document-too-long", PictureTexts.TooLarge(size, MostBytes)));

    /// <summary>The picture of a cushion of a quote.</summary>
    /// <param name="quote">The quote; its layouts say where prints lie.</param>
    /// <param name="cushion">The number of the cushion in its order, from 0.</param>
    /// <param name="language">The language of its title and description.</param>
    /// <param name="id">Prefix of every id in it, unique within its document; made from the cushion's id when left out.</param>
    public static string Write(Quote quote, int cushion, Language language, string? id = null) =>
        Write(quote.Drafting, cushion, [.. quote.Yardages.Select(yardage => yardage.Layout)], language, PictureView.Finished, id);

    /// <summary>The picture of a cushion of a drafting.</summary>
    /// <param name="drafting">A drafting without violations.</param>
    /// <param name="cushion">The number of the cushion in its order, from 0.</param>
    /// <param name="layouts">The layouts of fabrics with a repeat, which say where prints lie; without them there are no prints.</param>
    /// <param name="language">The language of its title and description.</param>
    /// <param name="view">What is shown.</param>
    /// <param name="id">Prefix of every id in it, unique within its document; made from the cushion's id when left out.</param>
    public static string Write(
        Drafting drafting,
        int cushion,
        ImmutableArray<FabricLayout> layouts,
        Language language,
        PictureView view = PictureView.Finished,
        string? id = null
    )
    {
        var source = PictureSource.Of(drafting, cushion, layouts);
        var words = new PictureWords(source, new MessageWriter(language, drafting.Order.Unit, spellsNames: true));
        string prefix = id ?? $"picture-{source.Cushion.Id}";
        string picture = "";
        // Redrawn more simply until it is small enough; a call's own bound is wider, and refuses what is larger still.
        for (int detail = 0; detail < Details; detail++)
        {
            picture =
                view == PictureView.Exploded
                    ? ExplodedPicture.Write(source, words, prefix, detail)
                    : FinishedPicture.Write(source, words, prefix, detail);
            if (System.Text.Encoding.UTF8.GetByteCount(picture) <= UsualBytes)
            {
                break;
            }
        }

        return picture;
    }

    /// <summary>The picture of a step of a quote: the panels that it handles on the finished cushion, and the seams between them.</summary>
    /// <param name="quote">The quote.</param>
    /// <param name="step">The number of the step, from 0.</param>
    /// <param name="language">The language of its title and description.</param>
    /// <param name="id">Prefix of every id in it, unique within its document; made from the step's number when left out.</param>
    /// <param name="key">What the step says, without the cushion: "step.hem"; empty when not known.</param>
    /// <returns>Null for a step that handles no panel of the finished cushion, or the pieces of several cushions.</returns>
    public static string? WriteStep(Quote quote, int step, Language language, string? id = null, string key = "") =>
        WriteStep(quote, new StepSources(quote), step, language, id, key);

    /// <summary>The picture of one of many steps of a quote.</summary>
    /// <param name="quote">The quote.</param>
    /// <param name="sources">What all of its steps are drawn from.</param>
    /// <param name="step">The number of the step, from 0.</param>
    /// <param name="language">The language of its title and description.</param>
    /// <param name="id">Prefix of every id in it, unique within its document; made from the step's number when left out.</param>
    /// <param name="key">What the step says, without the cushion: "step.hem"; empty when not known.</param>
    /// <returns>Null for a step that handles no panel of the finished cushion, or the pieces of several cushions.</returns>
    public static string? WriteStep(Quote quote, StepSources sources, int step, Language language, string? id = null, string key = "")
    {
        if (sources.Of(step) is not ({ } source, var parts))
        {
            return null;
        }

        return StepPicture.Write(
            source,
            new PictureWords(source, new MessageWriter(language, quote.Drafting.Order.Unit, spellsNames: true)),
            id ?? string.Create(CultureInfo.InvariantCulture, $"step-{step + 1}"),
            step + 1,
            parts,
            key
        );
    }
}
