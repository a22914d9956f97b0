using System.Collections.Immutable;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Engine.Cutting;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Additions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Wording;

/// <summary>Puts the engine's results into the contract's records, with lengths as numbers in the order's unit.</summary>
/// <param name="language">The reader's language.</param>
/// <param name="unit">The order's unit.</param>
/// <param name="warnings">What is allowed but unwise.</param>
/// <param name="onPaper">Whether sentences name parts and edges in words in English too.</param>
internal sealed class AnswerWording(Language language, LengthUnit unit, ImmutableArray<Violation> warnings, bool onPaper = false)
{
    private const int FullnessDigits = 4;

    private static readonly Func<Yardage, Violation?>[] LayoutNotes = [BroughtNote.Of, MotifNote.Of, WeltNote.Of];

    private readonly MessageWriter _writer = new(language, unit, onPaper);

    public IReadOnlyList<ViolationAnswer> Warnings => ViolationWording.Of(warnings, language, unit);

    /// <summary>The warnings, with what the layouts show.</summary>
    /// <param name="yardages">The yardages of all fabrics: only a layout shows that a motif is unknown, say, or brought
    /// fabric too short.</param>
    /// <param name="placed">Places what the layouts show as the caller knows its fields; null where it knows them by their
    /// pointers.</param>
    public IReadOnlyList<ViolationAnswer> WarningsWith(
        ImmutableArray<Yardage> yardages,
        Func<ImmutableArray<Violation>, ImmutableArray<Violation>>? placed = null
    )
    {
        ImmutableArray<Violation> shown = Shown(yardages);
        return ViolationWording.Of(warnings.AddRange(placed is null ? shown : placed(shown)), language, unit);
    }

    /// <summary>A sentence in the reader's language.</summary>
    public string Text(Message message) => _writer.Text(message);

    public QuoteAnswer Quote(Order order, Quote quote) =>
        new()
        {
            Reference = order.Reference,
            Customer = order.Customer,
            Due = order.Due,
            Note = order.Note,
            Units = order.Units!.Value,
            Engine = EngineVersion.Current,
            Cushions = Cushions(quote.Drafting),
            Pieces = Pieces(quote.Drafting),
            Seams = Seams(quote.Drafting),
            Layouts = Layouts(quote.Yardages),
            Yardage = Yardage(quote.Yardages),
            Materials = [.. quote.Materials.Select(material => MaterialWording.Of(material, unit, _writer))],
            Cost = quote.Cost is { } cost ? CostWording.Of(cost, quote.Drafting.Order.PriceBook, _writer) : null,
            Steps =
            [
                .. quote.Steps.Select(
                    (step, i) =>
                        new StepAnswer
                        {
                            Number = i + 1,
                            Text = _writer.Text(step.Text),
                            Pieces = step.Pieces,
                            Key = step.Text.Key,
                            Arguments = ArgumentWording.Of(step.Text, unit),
                        }
                ),
            ],
            Tools = [.. quote.Tools.Select(use => new ToolAnswer(use.Tool, _writer.Text(use.For)))],
            Care = quote.Care.IsEmpty ? null : string.Join(' ', quote.Care.Select(_writer.Text)),
            Cautions =
            [
                .. quote.Cautions.Select(caution => new CautionAnswer(caution.Code, _writer.Text(caution.Text))
                {
                    Key = caution.Text.Key,
                    Arguments = ArgumentWording.Of(caution.Text, unit),
                }),
            ],
            Warnings = ViolationWording.Of(
                [.. Unwise(quote.Yardages), .. quote.Cost is { } priced ? CostWording.Left(priced, quote.Materials) : []],
                language,
                unit
            ),
        };

    /// <summary>Each cushion as it will be when finished, in the order's order.</summary>
    public IReadOnlyList<CushionAnswer> Cushions(Drafting drafting) =>
        [.. FinishedCushion.Of(drafting).Select(cushion => CushionWording.Of(cushion, unit))];

    /// <summary>Every piece to cut, with its marks. A piece whose print is matched lies one way only, whatever its own
    /// rotations.</summary>
    public IReadOnlyList<PieceAnswer> Pieces(Drafting drafting) =>
        [
            .. drafting.Pieces.Select(piece => new PieceAnswer
            {
                Id = piece.Id,
                Cushion = piece.Cushion?.Id,
                Label = LabelOf(piece),
                Part = piece.Part.ToString(),
                Fabric = piece.Fabric,
                Quantity = piece.Quantity,
                Width = Number(piece.Width),
                Length = Number(piece.Length),
                Points = piece.Outline.IsEmpty
                    ? null
                    : [.. piece.Outline.Select(corner => new PointAnswer(Number(corner.X), Number(corner.Y)))],
                Rotation = FabricNesting.IsMatched(drafting.Fabric(piece), piece) ? Nesting.Rotations.None : piece.Rotations,
                Grain =
                    piece.IsRailroaded ? Grain.Railroaded
                    : piece.Rotations == Nesting.Rotations.QuarterTurns ? Grain.Either
                    : Grain.UpTheBolt,
                Because = _writer.Text(Derivation.Of(piece)),
                Marks =
                [
                    .. PieceMarks
                        .Of(piece)
                        .Select(mark => new MarkAnswer
                        {
                            Kind = mark.Kind,
                            X = Number(mark.From.X),
                            Y = Number(mark.From.Y),
                            ToX = mark.To is { } to ? Number(to.X) : null,
                            ToY = mark.To is { } end ? Number(end.Y) : null,
                            Because = _writer.Text(mark.Because),
                        }),
                ],
            }),
        ];

    /// <summary>What people call a piece, in the reader's language; null for one of a cushion without a label.</summary>
    private string? LabelOf(CutPiece piece) => piece.Name.Label is not null ? _writer.Text(piece.Name.ToMessage()) : null;

    public IReadOnlyList<SeamAnswer> Seams(Drafting drafting) =>
        [.. drafting.Patterns.SelectMany((pattern, i) => pattern.Seams.Select(seam => Seam(drafting.Order.Cushions[i], pattern, seam)))];

    // The fuller side is the other one, whether it is gathered or, as a face that is tufted deep, eased.
    private SeamAnswer Seam(CushionSpecification cushion, Pattern pattern, Seam seam)
    {
        double? eased = TuftEase.Of(cushion, pattern, seam);
        bool turned = eased < 1;
        return new()
        {
            Cushion = cushion.Id,
            One = Names(turned ? seam.Other : seam.One),
            Other = Names(turned ? seam.One : seam.Other),
            Length = Number(pattern.LengthOf(seam)),
            Lap = Number(seam.Lap),
            Fullness =
                seam.Fullness is { } fullness ? (double)fullness.Numerator / (double)fullness.Denominator
                : eased is { } ratio ? Math.Round(turned ? 1 / ratio : ratio, FullnessDigits)
                : null,
        };
    }

    /// <summary>The layouts, their lengths in the order's unit, measured from the fabric's cut end and its left
    /// edge.</summary>
    public IReadOnlyList<LayoutAnswer> Layouts(ImmutableArray<Yardage> yardages) =>
        [
            .. yardages
                .Select(yardage => yardage.Layout)
                .Select(layout => new LayoutAnswer
                {
                    Fabric = layout.Fabric.Id,
                    Label = layout.Fabric.Label,
                    Width = Number(layout.Fabric.UsableWidth),
                    Length = Number(layout.Length),
                    LowerBound = Number(layout.LowerBound),
                    ProvenMinimal = layout.ProvenMinimal,
                    Proof = LayoutProof.Of(layout)?.Kind ?? Nesting.ProofKind.None,
                    ProofFigures = LayoutProof.Of(layout) is { } proof ? Figures(proof) : null,
                    ProofBecause = LayoutProof.Of(layout) is { } proven ? _writer.Text(proven.Because) : "",
                    // Four digits: a hundredth of a percent, and the same bytes wherever the last bit of a double
                    // differs.
                    Used = Math.Round(layout.Used, 4),
                    Motif = layout.MotifX is { } x ? Motif(layout, x, layout.Fabric.LaidRepeat!) : null,
                    Placements = [.. layout.Placements.Select(Placement)],
                }),
        ];

    private MotifAnswer Motif(FabricLayout layout, Length x, RepeatSpecification repeat) =>
        new()
        {
            X = repeat.Width is null ? null : Number(x),
            Start = Number(layout.MotifStart),
            Known = layout.ShortestKnown is null,
            Length = repeat.Length is { } along ? Number(along) : null,
            Width = repeat.Width is { } across ? Number(across) : null,
            Drop = repeat.Drop,
        };

    /// <summary>Where one copy of a piece lies; width and length are those of the piece as it is turned.</summary>
    public PlacementAnswer Placement(LaidPiece laid) =>
        new()
        {
            Piece = laid.Piece.Id,
            Copy = laid.Copy,
            X = Number(laid.X),
            Y = Number(laid.Y),
            Rotation = laid.Turn,
            Width = Number(laid.Width),
            Length = Number(laid.Length),
        };

    /// <summary>How much to buy of each fabric, with the remnants that are worth keeping.</summary>
    public IReadOnlyList<YardageLine> Yardage(ImmutableArray<Yardage> yardages) =>
        [
            .. yardages.Select(yardage => new YardageLine
            {
                Fabric = yardage.Layout.Fabric.Id,
                Label = yardage.Layout.Fabric.Label,
                LayoutLength = Number(yardage.Layout.Length),
                SoldLength = (double)yardage.SoldAmount.Units,
                SoldUnit = yardage.Layout.Fabric.Sold.Unit,
                ProvenMinimal = yardage.Layout.ProvenMinimal,
                Remnants =
                [
                    .. Remnants
                        // Remnants are said in whole inches, or in steps of 25 mm.
                        .Of(yardage, unit == LengthUnit.Inch ? Length.FromInches(1) : Length.FromMillimetres(25))
                        .Select(left => new RemnantAnswer(Number(left.Width), Number(left.Length), Number(left.X), Number(left.Y))),
                ],
                Waste = Math.Round(yardage.Waste, 4),
                Because = _writer.Text(yardage.Because),
            }),
        ];

    // Warnings of the order first, then what the layouts of its fabrics show.
    private ImmutableArray<Violation> Unwise(ImmutableArray<Yardage> yardages) => warnings.AddRange(Shown(yardages));

    // In the order of the fabrics.
    private static ImmutableArray<Violation> Shown(ImmutableArray<Yardage> yardages)
    {
        var unwise = ImmutableArray.CreateBuilder<Violation>(1);
        foreach (Func<Yardage, Violation?> note in LayoutNotes)
        {
            foreach (Yardage yardage in yardages)
            {
                if (note(yardage) is { } said)
                {
                    unwise.Add(said);
                }
            }
        }

        unwise.AddRange(CutsNote.Of(yardages));
        return unwise.DrainToImmutable();
    }

    private static IReadOnlyList<string> Names(ImmutableArray<EdgeRef> edges) => [.. edges.Select(edge => edge.ToString())];

    private ProofFiguresAnswer Figures(LayoutProof proof) =>
        new()
        {
            Length = Number(proof.Length),
            Width = Number(proof.Width),
            Area = proof.Area is { } area ? Math.Round(area.In(unit), 4) : null,
        };

    // A decimal of a length in its unit is exact; as a double it prints the same digits.
    private double Number(Length length) => (double)length.In(unit);
}
