using CushionService.Engine.Geometry;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Patterns.Panels;

/// <summary>Names a panel within a pattern by what it becomes. Text is made for answers only; nothing reads it back.</summary>
/// <remarks>Names are copied and compared all through a draft: all but the edge is kept in one number.</remarks>
public readonly record struct PartName : INamed
{
    private const int PlaceBit = 8,
        HalfBit = 16,
        InnerBit = 24,
        NumberBit = 32,
        StretchBit = 48;

    private readonly ulong _rest;

    private static readonly string[] Kinds =
    [
        .. Enum.GetNames<PartKind>()
            .Select(name =>
                string.Concat(name.Select((letter, i) => i > 0 && char.IsUpper(letter) ? $"-{letter}" : $"{letter}")).ToLowerInvariant()
            ),
    ];

    /// <summary>A name of a kind alone.</summary>
    /// <param name="kind">What it becomes.</param>
    public PartName(PartKind kind) => _rest = (byte)kind;

    /// <summary>The upper face.</summary>
    public static PartName Top { get; } = new(PartKind.Top);

    /// <summary>The underside.</summary>
    public static PartName Bottom { get; } = new(PartKind.Bottom);

    /// <summary>A strip of the boxing that runs round corners.</summary>
    public static PartName Boxing { get; } = new(PartKind.Boxing);

    /// <summary>What it becomes.</summary>
    public PartKind Kind => (PartKind)(byte)_rest;

    /// <summary>The side of the outline that a panel, an end or a flange lies on; no edge for other kinds.</summary>
    public EdgeName Run { get; init; }

    /// <summary>The seam that a ruffle lies in, where the cushion has several; null otherwise.</summary>
    public EdgingPlace? Place
    {
        get => Byte(PlaceBit) is > 0 and var place ? (EdgingPlace)(place - 1) : null;
        init => _rest = With(PlaceBit, byte.MaxValue, value is { } place ? (int)place + 1 : 0);
    }

    /// <summary>Which of several of its kind, from 1 to 65 535; 0 for the only one.</summary>
    public int Number
    {
        get => (ushort)(_rest >> NumberBit);
        init => _rest = With(NumberBit, ushort.MaxValue, value);
    }

    /// <summary>Which half of a divided face.</summary>
    public FaceHalf Half
    {
        get => (FaceHalf)Byte(HalfBit);
        init => _rest = With(HalfBit, byte.MaxValue, (int)value);
    }

    /// <summary>Which panel of a joined one, from 1 at its start to 65 535; 0 when it is not joined.</summary>
    public int Stretch
    {
        get => (ushort)(_rest >> StretchBit);
        init => _rest = With(StretchBit, ushort.MaxValue, value);
    }

    /// <summary>Whether it is of the cover within the cover.</summary>
    public bool IsInner
    {
        get => Byte(InnerBit) > 0;
        init => _rest = With(InnerBit, byte.MaxValue, value ? 1 : 0);
    }

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

    private byte Byte(int bit) => (byte)(_rest >> bit);

    private ulong With(int bit, ushort most, int value)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(value);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(value, most);
        return (_rest & ~((ulong)most << bit)) | ((ulong)value << bit);
    }
}
