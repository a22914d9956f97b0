using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Intake;

/// <summary>Whether a cushion can bear what is added to it, and whether that is wise.</summary>
internal static class AdditionRules
{
    private static readonly Length LongTie = Length.FromInches(14);
    private static readonly Length CoatedOversize = Length.FromInches(0.25m);

    public static void Check(Cushion cushion, CushionReading reading, Findings findings)
    {
        EdgingRules.Check(cushion, reading, findings);
        Applies(AdditionKind.Ties, cushion.Ties is not null, nameof(Cushion.Ties), Ties);
        Applies(AdditionKind.Straps, cushion.Straps is not null, nameof(Cushion.Straps), Straps);
        Applies(AdditionKind.Tufts, cushion.Tufts is not null, nameof(Cushion.Tufts), Tufts);
        Applies(AdditionKind.Pocket, cushion.Pocket is not null, nameof(Cushion.Pocket), Pocket);
        Applies(AdditionKind.Base, cushion.Base is BaseKind.AntiSlip, nameof(Cushion.Base), Base);
        Applies(AdditionKind.Vents, cushion.Vents > 0, nameof(Cushion.Vents), Vents);
        if (
            IsCoated(cushion, reading, findings.Reading)
            && cushion.Fill is { Kind: FillKind.Foam }
            && (findings.Reading.Length(cushion.Fill.Oversize) ?? findings.Reading.Practice.FoamOversize) > CoatedOversize
        )
        {
            findings.Warn(
                "Fill.Oversize",
                "foam-too-large-for-coated",
                $"Coated fabric does not give: foam more than {findings.Reading.Text(CoatedOversize)} larger than its cover strains the seams."
            );
        }

        void Applies(AdditionKind kind, bool given, string field, Action<Cushion, CushionReading, Findings> check)
        {
            if (reading.Offer is not { } offer || offer.Additions.Contains(kind))
            {
                check(cushion, reading, findings);
            }
            else if (given)
            {
                findings.Refuse(
                    field,
                    "not-applicable",
                    $"{FieldNames.Words(field)} does not apply to construction {CushionValidator.Json(offer.Kind)}."
                );
            }
        }
    }

    private static void Ties(Cushion cushion, CushionReading reading, Findings findings)
    {
        if (cushion.Ties is not { } ties)
        {
            return;
        }

        Side side = ties.Side ?? Side.Back;
        StandsOn(side, "Ties.Side", reading, findings);
        OrderReading order = findings.Reading;
        if (TrimReading.TieLength(ties, order) is { } length && length > LongTie)
        {
            findings.Warn(
                "Ties.Length",
                "long-ties",
                $"Ties of {order.Text(length)} are longer than the usual {order.Text(LongTie)} and can tangle or strangle."
            );
        }

        if (
            TrimReading.TieWidth(ties, order) is { } width
            && reading.SideLength(side) is { } stretch
            && (ties.Pairs ?? 2) * 2 * width > stretch
        )
        {
            findings.Refuse("Ties.Pairs", "side-too-short", $"A side of {order.Text(stretch)} is too short for so many ties.");
        }
    }

    private static void Straps(Cushion cushion, CushionReading reading, Findings findings)
    {
        if (cushion.Straps is not { } straps)
        {
            return;
        }

        StandsOn(Side.Left, "Straps", reading, findings);
        StandsOn(Side.Right, "Straps", reading, findings);
        OrderReading order = findings.Reading;
        if (reading.Outline is { } outline && order.Length(straps.Length) is { } length && length < outline.Width)
        {
            findings.RefuseRange(
                "Straps.Length",
                "out-of-range",
                $"A strap reaches from seam to seam, at least {order.Text(outline.Width)}.",
                outline.Width,
                null
            );
        }

        if (reading.Side == Side.Bottom)
        {
            findings.Refuse("Straps", "not-combinable", "Straps across the underside would lie over its closure.");
        }
    }

    private static void Tufts(Cushion cushion, CushionReading reading, Findings findings)
    {
        if (cushion.Tufts is not { } tufts)
        {
            return;
        }

        if (reading.Side == Side.Bottom)
        {
            findings.Refuse("Tufts", "not-combinable", "Tufts would sew a closure across the underside shut.");
        }

        OrderReading order = findings.Reading;
        if (
            reading.Outline is not { } outline
            || tufts is not { Rows: >= 1 and <= 12, Columns: >= 1 and <= 24 }
            || TrimReading.Tufts(tufts, order) is not { } read
        )
        {
            return;
        }

        if (outline.Kind is not (OutlineKind.Rectangle or OutlineKind.RoundedRectangle))
        {
            findings.Refuse(
                "Tufts",
                "not-combinable",
                $"Tufts need a rectangle, rounded or not, not outline {CushionValidator.Json(outline.Kind)}."
            );
        }

        Length across = Length.FromNanometres(outline.Width.Nanometres / read.Columns),
            along = Length.FromNanometres(outline.Depth.Nanometres / read.Rows);
        Length interval = Length.Min(across, along);
        if (interval < 2 * read.ButtonDiameter)
        {
            findings.Refuse(
                "Tufts",
                "tufts-too-close",
                $"Tufts {order.Text(interval)} apart leave too little between buttons of {order.Text(read.ButtonDiameter)}."
            );
        }

        if (read.PullDepth > Length.Zero && (outline.Kind != OutlineKind.Rectangle || reading.Offer is { Thickness: false }))
        {
            findings.Refuse("Tufts.PullDepth", "not-combinable", "Deep tufts need a rectangle with a thickness.");
        }
        else if (reading.Thickness is { } thickness && 2 * read.PullDepth >= thickness)
        {
            findings.RefuseRange(
                "Tufts.PullDepth",
                "out-of-range",
                "Tufts may be pulled less than half as deep as the cushion is thick.",
                Length.Zero,
                Length.FromNanometres(thickness.Nanometres / 2)
            );
        }
    }

    private static void Pocket(Cushion cushion, CushionReading reading, Findings findings)
    {
        if (cushion.Pocket is not { } pocket)
        {
            return;
        }

        Side side = pocket.Side ?? Side.Right;
        StandsOn(side, "Pocket.Side", reading, findings);
        if (side == reading.Side && reading.OpensBoxing)
        {
            findings.Refuse("Pocket.Side", "not-combinable", "A pocket and an opening closure cannot stand on the same side.");
        }
        else if (cushion.Handle is not null && side == reading.HandleSide)
        {
            findings.Refuse("Pocket.Side", "not-combinable", "A pocket and a handle cannot stand on the same side.");
        }

        OrderReading order = findings.Reading;
        if (order.Length(pocket.Height) is { } height && reading.BoxingHeight is { } boxing && height > boxing)
        {
            findings.RefuseRange(
                "Pocket.Height",
                "out-of-range",
                $"A pocket may be at most as high as the boxing, {order.Text(boxing)}.",
                null,
                boxing
            );
        }

        if (order.Length(pocket.Width) is { } width && reading.FreeLength(side) is { } free && width > free)
        {
            findings.RefuseRange(
                "Pocket.Width",
                "out-of-range",
                $"The pocket must fit the side, of which {order.Text(free)} is free.",
                null,
                free
            );
        }
    }

    private static void Base(Cushion cushion, CushionReading reading, Findings findings)
    {
        if (cushion.Base == BaseKind.AntiSlip && reading.Side == Side.Bottom)
        {
            findings.Refuse("Base", "not-combinable", "An anti-slip base would cover a closure across the underside.");
        }
    }

    private static void Vents(Cushion cushion, CushionReading reading, Findings findings)
    {
        if (cushion.Vents > 0 && TrimReading.VentSide(cushion, reading) is null)
        {
            findings.Refuse("Vents", "not-combinable", "Vents need a side of a boxing without closure, handle or pocket.");
        }

        if (
            cushion is { Fill.Kind: not FillKind.None, Vents: null or 0 }
            && cushion.Fill is not null
            && IsCoated(cushion, reading, findings.Reading)
        )
        {
            findings.Warn("Vents", "coated-without-vents", "A cushion all of coated fabric needs vents, or the air cannot leave it.");
        }
    }

    private static bool IsCoated(Cushion cushion, CushionReading reading, OrderReading order)
    {
        string?[] ids = [reading.Top, cushion.Fabrics?.Bottom ?? reading.Top, cushion.Fabrics?.Sides ?? reading.Top];
        return ids.All(id => order.Order.Fabrics?.FirstOrDefault(fabric => fabric?.Id is { } named && named == id) is { Coated: true });
    }

    private static void StandsOn(Side side, string field, CushionReading reading, Findings findings)
    {
        if (side == Side.Bottom || (reading.Outline is { } outline && outline.Sides.All(stretch => stretch.Side != side)))
        {
            string name = reading.Outline is { } known ? $"Outline {CushionValidator.Json(known.Kind)}" : "The cushion";
            findings.Refuse(field, "not-combinable", $"{name} has no {CushionValidator.Json(side)} side to hold it.");
        }
    }
}
