using CushionService.Engine.Cutting;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Additions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Stocks;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Materials;

/// <summary>What the additions of a cover take besides fabric.</summary>
/// <param name="order">The order.</param>
/// <param name="shop">How each trimming is sold.</param>
internal sealed class TrimmingNeeds(OrderSpecification order, Shop shop)
{
    /// <summary>The item that cord is priced as where no stock is known.</summary>
    public const string Cord = "cord";

    /// <summary>The item that the cord of a bolster's tied ends is priced as.</summary>
    public const string EndCord = "end-cord";

    /// <summary>The item that binding for raw edges is priced as where no stock is known.</summary>
    public const string Binding = "binding";

    /// <summary>The item that a handle's webbing is priced as where no stock is known.</summary>
    public const string Webbing = "webbing";

    /// <summary>The item that buttons are priced as where no stock is known.</summary>
    public const string Buttons = "buttons";

    /// <summary>The item that a tuft's twine is priced as where no stock is known.</summary>
    public const string Twine = "twine";

    /// <summary>The item that an anti-slip base is priced as where no stock is known.</summary>
    public const string AntiSlip = "anti-slip";

    /// <summary>The item that eyelets are priced as where no stock is known.</summary>
    public const string Eyelets = "eyelets";

    /// <summary>The item that lip cord is priced as where no stock is known.</summary>
    public const string LipCord = "lip-cord";

    /// <summary>The item that fringe is priced as where no stock is known.</summary>
    public const string Fringe = "fringe";

    /// <summary>The item that gimp is priced as where no stock is known.</summary>
    public const string Gimp = "gimp";

    /// <summary>What one cushion line takes.</summary>
    /// <param name="cushion">A cushion line; amounts are for all its copies.</param>
    /// <param name="pattern">The pattern of its outer cover, with its additions.</param>
    public IEnumerable<Need> Of(CushionSpecification cushion, Pattern pattern) =>
        [
            .. AlongEdging(cushion, pattern),
            .. EndCords(cushion),
            .. Bindings(cushion, pattern),
            .. HandleWebbing(cushion),
            .. TuftNotions(cushion),
            .. ClosureButtons(cushion, pattern),
            .. UndersideBase(cushion, pattern),
            .. VentEyelets(cushion),
        ];

    // A welt takes cord over all covers of its line; a bought trim is bought by the length of its seams.
    private IEnumerable<Need> AlongEdging(CushionSpecification cushion, Pattern pattern)
    {
        if (cushion.Trim.Edging is WeltSpecification && WeltNeed.Of(cushion, pattern, order.Workroom.CuttingStep) is { } welt)
        {
            Length diameter = welt.Strip.Size;
            yield return ByLength(
                cushion,
                Cord,
                MaterialKind.Cord,
                stock => stock.Diameter,
                diameter,
                welt.Total,
                WeltTexts.Cord(diameter, welt.Because)
            );
        }

        if (cushion.Trim.Edging is BoughtTrimSpecification trim)
        {
            yield return Bought(cushion, trim, EdgingLength.Of(cushion, pattern, trim));
        }
    }

    // A tied bolster has a cord at either end of each of its covers.
    private IEnumerable<Need> EndCords(CushionSpecification cushion)
    {
        if (cushion.Ends?.Kind == BolsterEndKind.Tied)
        {
            Length each = cushion.Practice.Trims.EndCord;
            int covers = cushion.Quantity * (cushion.Fabrics.InnerCover is null ? 1 : 2);
            yield return new Need(
                cushion,
                shop.ByLength(EndCord, MaterialKind.Cord, shop.Named(EndCord, MaterialKind.Cord)),
                2 * covers * each.Nanometres,
                MaterialTexts.EndCord(covers, each)
            );
        }
    }

    // Rounded up to what a tape is read by for one cover, and only then multiplied by the quantity.
    private IEnumerable<Need> Bindings(CushionSpecification cushion, Pattern pattern)
    {
        var binding = EdgeBinding.Of(cushion, pattern);
        // Seams that enclose their raw edges leave none to bind.
        if (binding.Edges > Length.Zero)
        {
            (TrimPractice practice, Length step) = (cushion.Practice.Trims, cushion.Practice.MeasuringStep);
            yield return new Need(
                cushion,
                shop.ByLength(Binding, MaterialKind.Binding, shop.Stocked(MaterialKind.Binding)),
                cushion.Quantity * binding.Tape(practice, step).Nanometres,
                binding.Because(cushion.Quantity, practice, step)
            );
        }
    }

    private IEnumerable<Need> HandleWebbing(CushionSpecification cushion)
    {
        if (cushion.Handle is { HasWebbing: true } handle)
        {
            int count = cushion.Quantity * handle.Sides.Length;
            yield return Whole(
                cushion,
                Webbing,
                MaterialKind.Webbing,
                stock => stock.Width,
                handle.Width,
                (WebbingOf(cushion, handle), count),
                MaterialTexts.Webbing(count, handle.Length, cushion.Practice.Trims.HandleEndFold, handle.Width)
            );
        }
    }

    // Each tuft has a button on both faces, and twine twice through the thickness with enough to knot it.
    private IEnumerable<Need> TuftNotions(CushionSpecification cushion)
    {
        if (cushion.Trim.Tufts is { } tufts)
        {
            yield return Button(
                cushion,
                tufts.ButtonDiameter,
                2 * cushion.Quantity * tufts.Count,
                MaterialTexts.TuftButtons(cushion.Quantity, tufts.Count, tufts.ButtonDiameter)
            );
            yield return Whole(
                cushion,
                Twine,
                MaterialKind.Twine,
                null,
                null,
                (TwineOf(cushion), cushion.Quantity * tufts.Count),
                MaterialTexts.Twine(cushion.Quantity, tufts.Count, Through(cushion), cushion.Practice.Trims.TwineToKnot)
            );
        }
    }

    /// <summary>Webbing of one handle, folded under at both ends.</summary>
    public static Length WebbingOf(CushionSpecification cushion, HandleSpecification handle) =>
        handle.Length + (2 * cushion.Practice.Trims.HandleEndFold);

    /// <summary>Twine of one tuft: twice through the cushion, and enough to knot it.</summary>
    public static Length TwineOf(CushionSpecification cushion) => (2 * Through(cushion)) + cushion.Practice.Trims.TwineToKnot;

    private static Length Through(CushionSpecification cushion) => cushion.Thickness > Length.Zero ? cushion.Thickness : Loft(cushion);

    // A filled cover without a boxing is at most as thick as a balloon of two discs: 0.457 of what lies flat. That is 0.59907 / 1.31103,
    // the lemniscate's integrals (W. H. Paulsen, What is the shape of a Mylar balloon?, American Mathematical Monthly 101, 1994; the paper
    // is named from memory, the figure was computed).
    private static Length Loft(CushionSpecification cushion) =>
        Length.FromNanometres(Length.Min(cushion.Width, cushion.Depth).Nanometres * 457 / 1000).RoundUpTo(cushion.Practice.MeasuringStep);

    // The pattern has spaced the buttons of the closure already.
    private IEnumerable<Need> ClosureButtons(CushionSpecification cushion, Pattern pattern)
    {
        if (cushion.Closure is ButtonClosure closure)
        {
            int count = Fastenings.Buttons(pattern);
            yield return Button(
                cushion,
                closure.Diameter,
                cushion.Quantity * count,
                MaterialTexts.ClosureButtons(
                    cushion.Quantity,
                    count,
                    // Large buttons stand further apart.
                    Length.Max(cushion.Practice.Closures.ButtonSpacing, Length.FromNanometres(Fastenings.Run(pattern).Nanometres / count)),
                    closure.Diameter
                )
            );
        }
    }

    // By the area of the underside as it is cut; where the material comes off a roll, a layout replaces it.
    private IEnumerable<Need> UndersideBase(CushionSpecification cushion, Pattern pattern)
    {
        if (cushion.Trim.Base == BaseKind.AntiSlip)
        {
            decimal area = AntiSlipBase
                .PiecesOf(order, cushion, pattern)
                .Sum(piece => piece.Panel!.Copies * (decimal)piece.Area.In(LengthUnit.Millimetre));
            yield return new Need(
                cushion,
                AntiSlipBase.Goods(shop),
                cushion.Quantity * area,
                MaterialTexts.AntiSlip(cushion.Quantity, Area.FromSquareMillimetres(area))
            );
        }
    }

    private IEnumerable<Need> VentEyelets(CushionSpecification cushion)
    {
        if (cushion.Trim.Vents > 0)
        {
            yield return new Need(
                cushion,
                shop.Each(Eyelets, MaterialKind.Eyelet, shop.Stocked(MaterialKind.Eyelet)),
                cushion.Quantity * cushion.Trim.Vents,
                MaterialTexts.Eyelets(cushion.Quantity, cushion.Trim.Vents)
            );
        }
    }

    /// <summary>What a bought trim is bought as.</summary>
    /// <param name="trim">A trim that is not made of the order's fabric.</param>
    public static MaterialKind KindOf(BoughtTrimSpecification trim) =>
        trim.Trim switch
        {
            EdgingKind.LipCord => MaterialKind.LipCord,
            EdgingKind.Fringe => MaterialKind.Fringe,
            _ => MaterialKind.Gimp,
        };

    // A lip cord is known by its diameter, the others by their width.
    private Need Bought(CushionSpecification cushion, BoughtTrimSpecification trim, EdgingLength along)
    {
        bool cord = trim.Trim == EdgingKind.LipCord;
        string item =
            cord ? LipCord
            : trim.Trim == EdgingKind.Fringe ? Fringe
            : Gimp;
        return ByLength(
            cushion,
            item,
            KindOf(trim),
            cord ? stock => stock.Diameter : stock => stock.Width,
            trim.Size,
            along.Total,
            cord ? WeltTexts.Cord(trim.Size, along.Because) : WeltTexts.Trim(trim.Size, along.Because)
        );
    }

    private Need Button(CushionSpecification cushion, Length diameter, int count, Message because)
    {
        StockSpecification? stock = shop.Stocked(MaterialKind.Button, button => button.Diameter is null || button.Diameter == diameter);
        Goods goods = shop.Each(Buttons, MaterialKind.Button, stock);
        MaterialSize size = goods.Size ?? new MaterialSize(diameter, null, null);
        return new Need(cushion, goods with { Apart = diameter, Size = size }, count, because);
    }

    private static MaterialSize SizeOf(MaterialKind kind, Length size) =>
        kind is MaterialKind.Cord or MaterialKind.LipCord ? new MaterialSize(null, null, size) : new MaterialSize(size, null, null);

    // Lengths that are not joined, each from one spool or pack.
    private Need Whole(
        CushionSpecification cushion,
        string item,
        MaterialKind kind,
        Func<StockSpecification, Length?>? sizeOf,
        Length? size,
        (Length Each, int Count) lengths,
        Message because
    ) => ByLength(cushion, item, kind, sizeOf, size, lengths.Count * lengths.Each, because, least: lengths.Each) with { Whole = lengths };

    // A stock whose size is not said suits any; one of another size is passed over, as is a pack of less than the least length, and the
    // trimming is listed under its own name.
    private Need ByLength(
        CushionSpecification cushion,
        string item,
        MaterialKind kind,
        Func<StockSpecification, Length?>? sizeOf,
        Length? size,
        Length length,
        Message because,
        Length least = default
    )
    {
        StockSpecification? stock = shop.Stocked(
            kind,
            one => (sizeOf?.Invoke(one) is not { } sized || sized == size) && shop.Holds(one, least)
        );
        Goods goods = shop.ByLength(item, kind, stock);
        MaterialSize? sized = goods.Size ?? (size is null ? null : SizeOf(kind, size.Value));
        return new Need(cushion, goods with { Apart = size, Size = sized }, length.Nanometres, because);
    }
}
