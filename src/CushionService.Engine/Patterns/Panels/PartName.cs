using CushionService.Engine.Geometry;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Patterns.Panels;

/// <summary>Names a panel within a pattern by what it becomes. Text is made for answers only; nothing reads it back.</summary>
/// <param name="Kind">What it becomes.</param>
public readonly record struct PartName(PartKind Kind) : INamed
{
    private static readonly string[] Kinds =
    [
        .. Enum.GetNames<PartKind>()
            .Select(name =>
                string.Concat(name.Select((letter, i) => i > 0 && char.IsUpper(letter) ? $"-{letter}" : $"{letter}")).ToLowerInvariant()
            ),
    ];

    /// <summary>The upper face.</summary>
    public static PartName Top { get; } = new(PartKind.Top);

    /// <summary>The underside.</summary>
    public static PartName Bottom { get; } = new(PartKind.Bottom);

    /// <summary>A strip of the boxing that runs round corners.</summary>
    public static PartName Boxing { get; } = new(PartKind.Boxing);

    /// <summary>The side of the outline that a panel, an end or a flange lies on; no edge for other kinds.</summary>
    public EdgeName Run { get; init; }

    /// <summary>The seam that a ruffle lies in, where the cushion has several; null otherwise.</summary>
    public EdgingPlace? Place { get; init; }

    /// <summary>Which of several of its kind, from 1; 0 for the only one.</summary>
    public int Number { get; init; }

    /// <summary>Which half of a divided face.</summary>
    public FaceHalf Half { get; init; }

    /// <summary>Which panel of a joined one, from 1 at its start; 0 when it is not joined.</summary>
    public int Stretch { get; init; }

    /// <summary>Whether it is of the cover within the cover.</summary>
    public bool IsInner { get; init; }

    /// <summary>Whether it is a face of the outer cover, or a part of one.</summary>
    public bool IsFace => !IsInner && Kind is PartKind.Top or PartKind.Bottom;

    /// <summary>Whether it is a panel of a joined part, or half of a divided one.</summary>
    /// <param name="part">The part.</param>
    public bool IsOf(PartName part) => this with { Stretch = 0 } == part || this with { Stretch = 0, Half = FaceHalf.Whole } == part;

    /// <summary>The panel on a side of the outline.</summary>
    public static PartName Side(EdgeName run) => new(PartKind.Side) { Run = run };

    /// <summary>An end of a bolster.</summary>
    public static PartName End(EdgeName run) => new(PartKind.End) { Run = run };

    /// <inheritdoc />
    public Message ToMessage() => PartTexts.Name(Kind, Run.IsNone ? null : Run, Place, Half, Number, Stretch, IsInner);

    /// <summary>The text of answers: "boxing", "bottom-front", "gore-3", "inner-top", "boxing-2".</summary>
    public override string ToString()
    {
        string text = Kind switch
        {
            PartKind.Side => Run.ToString(),
            PartKind.End => $"{Run}-{Kinds[(int)Kind]}",
            _ => Kinds[(int)Kind],
        };
        if (Kind == PartKind.Flange)
        {
            text = $"{text}-{Run}";
        }

        if (Place is { } place)
        {
            text = $"{text}-{place.ToString().ToLowerInvariant()}";
        }

        if (Half != FaceHalf.Whole)
        {
            text = $"{text}-{Half.ToString().ToLowerInvariant()}";
        }

        text = Number > 0 ? $"{text}-{Number}" : text;
        text = Stretch > 0 ? $"{text}-{Stretch}" : text;
        return IsInner ? $"inner-{text}" : text;
    }
}
