using System.Collections.Immutable;
using CushionService.Contract.Answers;
using CushionService.Documents.Drawings;
using CushionService.Engine.Cutting;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Quoting;
using CushionService.Wording;

namespace CushionService.Documents.TrueSize;

/// <summary>A piece that is drawn at true size.</summary>
/// <param name="Number">Its number in the answer's list, from 1.</param>
/// <param name="Answer">The piece as the answer has it, with lengths in the order's unit.</param>
/// <param name="Drawn">The same in millimetres.</param>
/// <param name="Lines">Its lines and arcs.</param>
internal sealed record PatternPiece(int Number, PieceAnswer Answer, PieceAnswer Drawn, PieceLines Lines)
{
    // Chords that stand for an arc where only its place matters.
    private const int Chords = 32;

    /// <summary>The pieces that are cut by the same pattern: of the same lines and marks.</summary>
    public IReadOnlyList<PatternPiece> Same { get; private init; } = [];

    /// <summary>Whether it is a plain rectangle, which is cut by its size alone.</summary>
    public bool IsRectangle => Drawn.Points is null;

    /// <summary>All pieces of an order.</summary>
    /// <param name="drafting">The pieces.</param>
    /// <param name="unit">The order's unit.</param>
    /// <param name="language">The reader's language.</param>
    public static IReadOnlyList<PatternPiece> Of(Drafting drafting, LengthUnit unit, Language language)
    {
        IReadOnlyList<PieceAnswer> answers = PieceNames.WithFabrics(
            new AnswerWording(language, unit, [], onPaper: true).Pieces(drafting),
            drafting,
            language
        );
        IReadOnlyList<PieceAnswer> drawn = new AnswerWording(language, LengthUnit.Millimetre, [], onPaper: true).Pieces(drafting);
        return [.. drafting.Pieces.Select((piece, i) => new PatternPiece(i + 1, answers[i], drawn[i], PieceLines.Of(piece)))];
    }

    /// <summary>The pieces that a call asks for: the one of that id, or else all that are no plain rectangles; where every piece is one,
    /// all of them. Those of one form share a pattern.</summary>
    /// <param name="pieces">All pieces of the order.</param>
    /// <param name="id">The id of one; null for those that need a pattern.</param>
    /// <returns>Empty where no piece has that id.</returns>
    public static IReadOnlyList<PatternPiece> Chosen(IReadOnlyList<PatternPiece> pieces, string? id)
    {
        if (id is not null)
        {
            return [.. pieces.Where(piece => piece.Answer.Id == id)];
        }

        PatternPiece[] shaped = [.. pieces.Where(piece => !piece.IsRectangle)];
        return
        [
            .. (shaped.Length > 0 ? shaped : pieces)
                .GroupBy(piece => piece.Form)
                .Select(group => group.First() with { Same = [.. group.Skip(1)] }),
        ];
    }

    // Pieces of one form have the same pattern, whatever they are called.
    private string Form =>
        string.Join(
            ' ',
            (string[])
                [
                    CurvePath.Of(Lines.Cut),
                    CurvePath.Of(Lines.Finished),
                    Drawn.Rotation.ToString(),
                    .. Drawn.Marks.Select(mark => FormattableString.Invariant($"{mark.Kind} {mark.X} {mark.Y} {mark.ToX} {mark.ToY}")),
                ]
        );

    /// <summary>Where it is in a drawing.</summary>
    /// <param name="corner">Its upper left corner, in millimetres.</param>
    /// <param name="turned">Whether it is drawn a quarter turn clockwise.</param>
    public FabricView View(Spot corner, bool turned) => new(Drawn.Width, 0, Drawn.Length, turned, corner);

    /// <summary>The corners of its cut line, with chords for arcs.</summary>
    /// <param name="view">Where it is in a drawing.</param>
    public IEnumerable<Spot> Corners(FabricView view) => Strokes(Lines.Cut, view).Select(stroke => stroke.From);

    /// <summary>Every line and mark, as short straight lines of a drawing.</summary>
    /// <param name="view">Where it is in a drawing.</param>
    public List<(Spot From, Spot To)> Strokes(FabricView view) =>
        [
            .. Strokes(Lines.Cut, view),
            .. Strokes(Lines.Finished, view),
            .. Drawn.Marks.Select(mark => (view.At(mark.X, mark.Y), view.At(mark.ToX ?? mark.X, mark.ToY ?? mark.Y))),
        ];

    private static IEnumerable<(Spot From, Spot To)> Strokes(ImmutableArray<Segment> lines, FabricView view)
    {
        foreach (Segment line in lines)
        {
            int count = line.IsStraight ? 1 : Chords;
            Spot from = At(0);
            for (int i = 1; i <= count; i++)
            {
                Spot to = At((double)i / count);
                yield return (from, to);
                from = to;
            }

            Spot At(double share)
            {
                Point point = line.At(share);
                return view.At(point.X.Nanometres / 1e6, point.Y.Nanometres / 1e6);
            }
        }
    }
}
