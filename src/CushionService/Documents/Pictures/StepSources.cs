using CushionService.Engine.Cutting;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Quoting;

namespace CushionService.Documents.Pictures;

/// <summary>What the pictures of a quote's steps are drawn from: the steps of a cushion follow each other, so that its scene is built once
/// for all of them.</summary>
/// <param name="quote">The quote.</param>
internal sealed class StepSources(Quote quote)
{
    private readonly Dictionary<string, CutPiece> _pieces = quote
        .Drafting.Pieces.Where(piece => piece.Cushion is not null)
        .ToDictionary(piece => piece.Id);

    private readonly Dictionary<string, int> _cushions = quote
        .Drafting.Order.Cushions.Select((cushion, number) => (cushion.Id, number))
        .ToDictionary();

    private (int Cushion, PictureSource Source)? _last;

    /// <summary>The number of a cushion in the order, from 0; null for an id that the order does not have.</summary>
    public int? NumberOf(string cushion) => _cushions.TryGetValue(cushion, out int number) ? number : null;

    /// <summary>The cushion of a step, and the parts that it handles.</summary>
    /// <param name="step">The number of the step, from 0.</param>
    /// <returns>Null for a step that handles no piece of a cushion, or pieces of several.</returns>
    public (PictureSource Source, IReadOnlySet<PartName> Parts)? Of(int step)
    {
        CutPiece[] pieces = [.. quote.Steps[step].Pieces.Select(id => _pieces.GetValueOrDefault(id)).OfType<CutPiece>()];
        string[] cushions = [.. pieces.Select(piece => piece.Cushion!.Id).Distinct()];
        if (cushions is not [var id])
        {
            return null;
        }

        int cushion = _cushions[id];
        if (_last?.Cushion != cushion)
        {
            _last = (cushion, PictureSource.Of(quote.Drafting, cushion, [.. quote.Yardages.Select(yardage => yardage.Layout)]));
        }

        return (_last!.Value.Source, pieces.Select(piece => piece.Part).ToHashSet());
    }
}
