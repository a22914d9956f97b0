using System.Collections.Immutable;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Intake;

/// <summary>Checks a fabric, and specifies it.</summary>
/// <remarks>A fabric's usable width is its width less both selvedges. Shrinkage is a share of the length or the width as bought: 0.03 is
/// 3 %. A repeat's length runs along the bolt, its width across.</remarks>
internal static class FabricIntake
{
    private static readonly LengthField<Fabric> Width = RecordForm<Fabric>.Length(nameof(Fabric.Width)),
        Brought = RecordForm<Fabric>.Length(nameof(Fabric.Brought)),
        Selvedge = RecordForm<Fabric>.Length(nameof(Fabric.Selvedge)),
        Squaring = RecordForm<Fabric>.Length(nameof(Fabric.Squaring));

    private static readonly LengthField<Repeat> RepeatLength = RecordForm<Repeat>.Length(nameof(Repeat.Length)),
        RepeatWidth = RecordForm<Repeat>.Length(nameof(Repeat.Width));

    private static readonly LengthField<MotifPosition> MotifX = RecordForm<MotifPosition>.Length(nameof(MotifPosition.X)),
        MotifY = RecordForm<MotifPosition>.Length(nameof(MotifPosition.Y));

    /// <summary>The fabric; null where anything that it cannot do without was refused.</summary>
    /// <param name="fabric">The fabric as written.</param>
    /// <param name="index">Its index in the order, for pointers of later findings.</param>
    /// <param name="order">The order, with its price book, its currency and its practice.</param>
    /// <param name="purpose">What the order is sent for: only a fit takes fabric on hand.</param>
    /// <param name="findings">Takes what is wrong with the fabric.</param>
    public static FabricSpecification? Read(Fabric fabric, int index, OrderContext order, Purpose purpose, Findings findings)
    {
        // Every part is read before the first refusal ends the reading, so that all that is wrong is reported at once.
        Fields<Fabric> fields = RecordForm<Fabric>.Read(fabric, findings);
        RepeatSpecification? repeat = fabric.Repeat is { } drawn
            ? ReadRepeat(drawn, fields[Width], fields[Selvedge], findings.Within(nameof(fabric.Repeat)))
            : null;
        (Fraction along, Fraction across) = ReadShrinkage(fabric.Shrinkage, findings.Within(nameof(fabric.Shrinkage)));
        (SaleRule? sold, ItemPriceSpecification? price) = FabricPricing.Of(fabric, order, findings);
        ImmutableArray<OffcutSpecification> offcuts = OffcutIntake.Read(fabric.OnHand, fields[Width], purpose, findings);
        // Where the motif is on a hide is seen by who lays it, and not known here.
        if (repeat is not null && fabric.OnHand?.Any(offcut => offcut?.Points is not null) == true)
        {
            findings.Refuse(nameof(fabric.Repeat), "not-combinable", FabricTexts.HideWithRepeat);
        }

        if (fields[Width] is not { } width || fields.Or(Selvedge, Length.Zero) is not { } selvedge)
        {
            return null;
        }

        if (fabric.Brought is not null && fabric.CustomerOwned != true)
        {
            findings.NotApplicable(nameof(fabric.Brought), FabricTexts.BroughtByCustomer);
        }

        HoldsStrip(width, selvedge, findings);
        // Everything that a layout needs must have passed.
        return fabric.Id is not { } id || sold is null || fields.Or(Squaring, order.Practice.Squaring) is not { } squaring
            ? null
            : new FabricSpecification
            {
                Id = id,
                Label = fabric.Label,
                Pointer = $"/fabrics/{index}",
                Width = width,
                Selvedge = selvedge,
                OneWay = fabric.OneWay ?? fabric.Pile ?? false,
                Coated = fabric.Coated ?? false,
                Pile = fabric.Pile ?? false,
                IsShrinkageKnown = fabric.Shrinkage is not null,
                Grain = fabric.Grain ?? Grain.UpTheBolt,
                Repeat = repeat,
                LengthShrinkage = along,
                WidthShrinkage = across,
                Squaring = squaring,
                Sold = sold,
                Colour = fabric.Colour is { } colour && TextPattern.Of(HexColour.Pattern).IsMatch(colour) ? HexColour.InSix(colour) : null,
                Lot = fabric.Lot,
                CustomerOwned = fabric.CustomerOwned ?? false,
                Brought = fields[Brought],
                OnHand = offcuts,
                Price = price,
            };
    }

    // Both selvedges are cut off, and what is left must hold a strip.
    private static void HoldsStrip(Length width, Length selvedge, Findings findings)
    {
        if (width - 2 * selvedge < FabricTrade.NarrowestUsable)
        {
            Length widest = Length.FromNanometres((width - FabricTrade.NarrowestUsable).Nanometres / 2);
            findings.RefuseRange(
                nameof(Fabric.Selvedge),
                "out-of-range",
                FabricTexts.SelvedgesTooWide(FabricTrade.NarrowestUsable, widest),
                null,
                widest
            );
        }
    }

    // The repeat, with where its first motif is. A half drop shifts every other column by half a length, and so needs both sizes.
    private static RepeatSpecification? ReadRepeat(Repeat repeat, Length? width, Length? selvedge, Findings findings)
    {
        Fields<Repeat> fields = RecordForm<Repeat>.Read(repeat, findings);
        Fields<MotifPosition>? motif = repeat.Motif is { } position
            ? RecordForm<MotifPosition>.Read(position, findings.Within(nameof(repeat.Motif)))
            : null;
        // Stripes repeat across alone, bands along alone.
        if (repeat is { Length: null, Width: null })
        {
            findings.Refuse(nameof(repeat.Length), "required", FabricTexts.RepeatEmpty);
            return null;
        }

        if (repeat is { Drop: DropKind.Half, Width: null } or { Drop: DropKind.Half, Length: null })
        {
            string field = repeat.Width is null ? nameof(repeat.Width) : nameof(repeat.Length);
            findings.Refuse(field, "required", FabricTexts.HalfDrop(field));
        }

        if (repeat is { Width: null, Motif.X: not null })
        {
            findings.NotApplicable($"{nameof(repeat.Motif)}.{nameof(MotifPosition.X)}", FabricTexts.MotifAcross("X"));
        }

        if (repeat is { Length: null, Motif.Y: not null })
        {
            findings.NotApplicable($"{nameof(repeat.Motif)}.{nameof(MotifPosition.Y)}", FabricTexts.MotifAlong("Y"));
        }

        OnFabric(fields[RepeatWidth], motif?[MotifX], width, selvedge, findings);
        return fields.IsSound
            ? new RepeatSpecification(fields[RepeatLength], fields[RepeatWidth], repeat.Drop ?? DropKind.Straight)
            {
                MotifX = motif?[MotifX],
                MotifY = motif?[MotifY],
            }
            : null;
    }

    // A repeat is measured on the fabric, so it is no wider, and its first motif lies on what is cut. A width that was refused is no limit.
    private static void OnFabric(Length? repeat, Length? motif, Length? width, Length? selvedge, Findings findings)
    {
        if (width is not { } whole)
        {
            return;
        }

        if (repeat > whole)
        {
            findings.RefuseRange(RepeatWidth.Name, "out-of-range", FabricTexts.RepeatTooWide(whole), null, whole);
        }

        Length usable = whole - 2 * (selvedge ?? Length.Zero);
        if (motif > usable)
        {
            findings
                .Within(nameof(Repeat.Motif))
                .RefuseRange(MotifX.Name, "out-of-range", FabricTexts.MotifOffFabric(usable), Length.Zero, usable);
        }
    }

    // The shrinkage along and across; none where it is left out, or was refused.
    private static (Fraction Length, Fraction Width) ReadShrinkage(Shrinkage? shrinkage, Findings findings) =>
        shrinkage is not null && RecordForm<Shrinkage>.Read(shrinkage, findings).IsSound
            ? (Shares.Of(shrinkage.Length) ?? default, Shares.Of(shrinkage.Width) ?? default)
            : default;
}
