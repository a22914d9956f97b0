using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Scenes;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Documents.Pictures;

/// <summary>The words of a cushion's pictures, in the reader's language.</summary>
/// <param name="source">What is drawn.</param>
/// <param name="writer">Writes messages.</param>
internal sealed class PictureWords(PictureSource source, MessageWriter writer)
{
    /// <summary>A message in the reader's language.</summary>
    /// <param name="message">Lengths in it are written in the order's unit.</param>
    public string Text(Message message) => writer.Text(message);

    /// <summary>The words of the finished cushion's picture.</summary>
    /// <param name="id">Prefix of its ids.</param>
    /// <param name="turned">Whether the cushion is shown turned over too.</param>
    public PictureText Finished(string id, bool turned) =>
        new(
            id,
            Text(PictureTexts.Finished(source.Cushion.Name)),
            Sentences([.. Cushion(), .. turned ? [PictureTexts.SeenTurnedOver] : (Message[])[]])
        );

    /// <summary>The words of the picture of its pieces apart.</summary>
    /// <param name="id">Prefix of its ids.</param>
    /// <param name="listed">The pieces that are named.</param>
    /// <param name="apart">Their numbers.</param>
    public PictureText Exploded(string id, IReadOnlyList<ScenePart> listed, ExplodedScene apart)
    {
        Message[] pieces = [.. listed.Select(part => PictureTexts.Numbered(apart.NumberOf(part), part.Panel.Part))];
        return new(id, Text(PictureTexts.Exploded(source.Cushion.Name)), Sentences([.. Cushion(), PictureTexts.Pieces([.. pieces])]));
    }

    /// <summary>The words of the picture of a step.</summary>
    /// <param name="id">Prefix of its ids.</param>
    /// <param name="number">The step's number, from 1.</param>
    /// <param name="parts">The panels to look at.</param>
    public PictureText Step(string id, int number, IEnumerable<PartName> parts) =>
        new(id, Text(PictureTexts.Step(source.Cushion.Name, number)), Sentences([PictureTexts.Highlighted([.. parts])]));

    /// <summary>Sentences one after the other.</summary>
    /// <param name="sentences">Each ends with its own full stop.</param>
    public string Sentences(IEnumerable<Message> sentences) => string.Join(' ', sentences.Select(Text));

    /// <summary>What the cushion is.</summary>
    public IEnumerable<Message> Cushion()
    {
        CushionSpecification cushion = source.Cushion;
        // A bolster's outline is its end, so its length is what a reader takes for its width.
        bool lies = cushion.Construction == Construction.Bolster;
        Length thickness = lies ? cushion.Depth : cushion.Thickness;
        yield return PictureTexts.Cushion(
            cushion.Construction,
            cushion.Outline.Kind,
            lies ? cushion.Length : cushion.Width,
            lies ? cushion.Width : cushion.Depth,
            thickness > Length.Zero ? thickness : null
        );
        yield return PictureTexts.Closure(cushion.Closure.Kind, cushion.Closure.Side);
        if (cushion.Trim.Edging is { } edging)
        {
            yield return PictureTexts.Edging(edging.Kind, edging.At);
        }

        yield return PictureTexts.Fabrics([.. source.Scene.Parts.Select(part => source.Fabric(part.Panel.Role).Name).Distinct()]);
    }
}
