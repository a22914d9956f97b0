using System.Collections.Immutable;
using CushionService.Contract.Answers;
using CushionService.Engine.Cutting;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Quoting;
using CushionService.Wording;

namespace CushionService.Documents;

/// <summary>What paper calls pieces.</summary>
internal static class PieceNames
{
    // What is between the cushion and its part in a label.
    private const string Before = ", ";

    /// <summary>The pieces, each with a label in the reader's words, which are those of the steps. In English the part of the answer reads
    /// as words for most pieces: they stay as they are.</summary>
    /// <param name="pieces">The pieces as they are answered.</param>
    /// <param name="drafting">The same as the engine has them, in the same order.</param>
    /// <param name="language">The reader's language.</param>
    public static IReadOnlyList<PieceAnswer> OnPaper(IReadOnlyList<PieceAnswer> pieces, Drafting drafting, Language language)
    {
        var writer = new MessageWriter(language, LengthUnit.Millimetre, spellsNames: true);
        return [.. pieces.Zip(drafting.Pieces, (piece, cut) => Named(piece, cut, language, writer))];
    }

    /// <summary>The pieces as <see cref="OnPaper(IReadOnlyList{PieceAnswer}, Drafting, Language)"/> names them, each with the label of its
    /// fabric instead of the fabric's id, where the order has one.</summary>
    /// <param name="pieces">The pieces as they are answered.</param>
    /// <param name="drafting">The same as the engine has them, in the same order.</param>
    /// <param name="language">The reader's language.</param>
    public static IReadOnlyList<PieceAnswer> WithFabrics(IReadOnlyList<PieceAnswer> pieces, Drafting drafting, Language language) =>
        [.. OnPaper(pieces, drafting, language).Zip(drafting.Pieces, (piece, cut) => piece with { Fabric = drafting.Fabric(cut).Name })];

    /// <summary>The seams, each with its edges as the steps name them.</summary>
    /// <param name="seams">The seams as they are answered.</param>
    /// <param name="drafting">The same as the engine has them, in the same order.</param>
    /// <param name="language">The reader's language.</param>
    public static IReadOnlyList<SeamAnswer> OnPaper(IReadOnlyList<SeamAnswer> seams, Drafting drafting, Language language)
    {
        var writer = new MessageWriter(language, LengthUnit.Millimetre, spellsNames: true);
        return
        [
            .. seams.Zip(
                drafting.Patterns.SelectMany(pattern => pattern.Seams),
                (answer, seam) => answer with { One = Edges(seam.One), Other = Edges(seam.Other) }
            ),
        ];

        string[] Edges(ImmutableArray<EdgeRef> edges) => [.. edges.Select(edge => writer.Text(AnswerTexts.EdgeOf(edge.Part, edge.Edge)))];
    }

    /// <summary>What a drawing calls a piece beside its number, the longest first: its label, or its id; then its part alone, for a long
    /// name of its cushion leaves no room for the part.</summary>
    /// <param name="piece">A piece, as paper has it.</param>
    public static IReadOnlyList<string> BesideNumber(PieceAnswer piece) =>
        piece.Label is not { } label ? [piece.Id]
        : piece.Cushion is not null && label.LastIndexOf(Before, StringComparison.Ordinal) is >= 0 and int at
            ? [label, label[(at + Before.Length)..]]
        : [label];

    /// <summary>What a piece of a cushion is called beside others of the same cushion.</summary>
    /// <param name="piece">A piece, as paper has it.</param>
    public static string PartOf(PieceAnswer piece) => piece.Label is null ? piece.Part : BesideNumber(piece)[^1];

    private static PieceAnswer Named(PieceAnswer piece, CutPiece cut, Language language, MessageWriter writer)
    {
        if (cut.Cushion is not { } cushion || (language != Language.English && piece.Label is not null))
        {
            return piece;
        }

        string part = writer.Text(cut.Part.ToMessage());
        return part == piece.Part ? piece : piece with { Label = writer.Text(new PieceName(cut.Id, cushion.Name, cut.Part).ToMessage()) };
    }
}
