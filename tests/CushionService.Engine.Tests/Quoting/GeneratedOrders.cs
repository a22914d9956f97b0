using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Stocks;
using CushionService.Engine.Specifications.Trimmings;
using CushionService.Nesting;

namespace CushionService.Engine.Tests.Quoting;

/// <summary>Orders that keep every rule, as many and as odd as wanted; the same number always makes the same order.</summary>
internal sealed class GeneratedOrders
{
    private readonly Random _random;
    private readonly LengthUnit _unit;
    private readonly WorkroomPractice _workroom;

    private GeneratedOrders(int number)
    {
        _random = new Random(number);
        _unit = Pick(LengthUnit.Inch, LengthUnit.Centimetre, LengthUnit.Millimetre);
        _workroom = (_unit == LengthUnit.Inch ? WorkroomPractice.Imperial : WorkroomPractice.Metric) with
        {
            Squaring = Chance(20) ? Tenths(1, 20) : Length.Zero,
        };
    }

    public static OrderSpecification Order(int number) => new GeneratedOrders(number).Build();

    private OrderSpecification Build()
    {
        string[] fabrics = [.. new[] { "main", "lining", "trim" }.Take(_random.Next(1, 4))];
        return new OrderSpecification
        {
            Unit = _unit,
            Currency = Chance(50) ? new Currency("USD") : null,
            Effort = Effort.Quick,
            Cushions = [.. Enumerable.Range(0, _random.Next(1, 3)).Select(i => Cushion($"cushion-{i}", fabrics))],
            Pieces = Chance(20)
                ?
                [
                    new LoosePieceSpecification(
                        "runner",
                        "/pieces/0",
                        fabrics[0],
                        _random.Next(1, 4),
                        Tenths(20, 300),
                        Tenths(20, 600),
                        null,
                        []
                    ),
                ]
                : [],
            Fabrics = [.. fabrics.Select(Fabric)],
            Workroom = _workroom,
        };
    }

    private CushionSpecification Cushion(string id, string[] fabrics)
    {
        bool boxed = Chance(60);
        Length width = Tenths(80, 600),
            depth = Tenths(80, 400),
            thickness = boxed ? Tenths(10, 80) : Length.Zero;
        BoxingJoins joins = Pick(BoxingJoins.Corners, BoxingJoins.Back);
        ClosureSpecification closure = boxed ? OfBox(joins, depth, thickness) : OfPillow(depth);
        return new CushionSpecification
        {
            Id = id,
            Quantity = _random.Next(1, 4),
            Construction = boxed ? Construction.Boxed : Construction.KnifeEdge,
            Outline = new RectangleOutline(width, depth),
            Thickness = thickness,
            SeamAllowance = Chance(70) ? _workroom.SeamAllowance : Tenths(3, 10),
            Joins = joins,
            Closure = closure,
            Handle = boxed && Chance(30) ? Strap(closure, width, depth, thickness) : null,
            Fill = Fill(boxed),
            Fabrics = new FabricRoles(Pick(fabrics), Pick(fabrics), Pick(fabrics), Pick(fabrics)),
        };
    }

    private ClosureSpecification OfBox(BoxingJoins joins, Length depth, Length thickness)
    {
        Side side = joins == BoxingJoins.Back ? Side.Back : Pick(Side.Front, Side.Right, Side.Back, Side.Left);
        Length turn = joins == BoxingJoins.Back && Chance(80) ? Length.Min(_workroom.ZipperReturn, depth - Tenths(10, 10)) : Length.Zero;
        Length overlap = Length.Min(Tenths(5, 20), thickness);
        return _random.Next(6) switch
        {
            4 => new ButtonClosure(Chance(70) ? side : Side.Bottom, turn, Fold(thickness, overlap), overlap, overlap - Tenths(1, 3)),
            5 => new TieClosure(Chance(70) ? side : Side.Bottom, turn, Fold(thickness, overlap), overlap, Tenths(60, 100)),
            0 => new ZipperClosure(side, turn, _workroom.ZipperTurnUnder),
            1 => new HookAndLoopClosure(side, turn, Fold(thickness, overlap), overlap, overlap - Tenths(1, 3)),
            2 => Envelope(depth),
            _ => new HandSewnClosure(side),
        };
    }

    private ClosureSpecification OfPillow(Length depth) =>
        _random.Next(6) switch
        {
            4 => new ButtonClosure(Side.Bottom, Length.Zero, Tenths(3, 15), Tenths(10, 30), Tenths(5, 7)),
            5 => new TieClosure(Side.Bottom, Length.Zero, Tenths(3, 15), Tenths(10, 30), Tenths(60, 100)),
            0 => new ZipperClosure(Pick(Side.Front, Side.Right, Side.Back, Side.Left, Side.Bottom), Length.Zero, _workroom.ZipperTurnUnder),
            1 => new HookAndLoopClosure(Side.Bottom, Length.Zero, Tenths(3, 15), Tenths(10, 30), Tenths(5, 7)),
            2 => Envelope(depth),
            _ => new HandSewnClosure(Pick(Side.Front, Side.Right, Side.Back, Side.Left)),
        };

    private EnvelopeClosure Envelope(Length depth) =>
        new(Side.Bottom, Tenths(3, 15), Length.Min(_workroom.Closures.Envelope.Overlap(depth), depth));

    // A hem that leaves something of the strip.
    private Length Fold(Length thickness, Length overlap) =>
        Length.Min(Tenths(3, 10), HookAndLoopClosure.VisibleHeight(thickness, overlap) - Length.FromNanometres(1));

    private HandleSpecification Strap(ClosureSpecification closure, Length width, Length depth, Length thickness)
    {
        // Where the closure is at the back, a strap may be on the front or, short of a return, on the right.
        Side side = closure.Side == Side.Front ? Side.Back : Pick(Side.Front, closure.Side == Side.Right ? Side.Left : Side.Right);
        Length room = side is Side.Front or Side.Back ? width : depth - _workroom.ZipperReturn;
        Length span = Length.Min(Tenths(30, 90), Length.Max(room, Tenths(5, 5)));
        return new HandleSpecification(HandleKind.FoldedStrap, side, Length.Min(Tenths(5, 20), thickness), span + Tenths(2, 10), span);
    }

    private FillSpecification? Fill(bool boxed) =>
        _random.Next(3) switch
        {
            0 => null,
            1 when boxed => new FillSpecification(
                FillKind.Foam,
                "foam",
                Chance(50) ? _random.Next(20, 60) : null,
                Chance(50) ? Tenths(1, 5) : Length.Zero,
                0.9m
            ),
            _ when Chance(30) => new FillSpecification(FillKind.Form, "form", null, Length.Zero, 0.9m)
            {
                Fullness = Pick(Fullness.Soft, Fullness.Medium, Fullness.Plump),
                Form = new FormSpecification(null, null, null, null),
            },
            _ => new FillSpecification(FillKind.Loose, "feather", 52, Length.Zero, 0.9m),
        };

    private FabricSpecification Fabric(string id)
    {
        bool oneWay = Chance(20);
        bool repeat = Chance(30),
            across = Chance(60);
        bool yards = Chance(60);
        return new FabricSpecification
        {
            Id = id,
            Width = Pick(In(45), In(54), In(60), Mm(1370), Mm(1500), In(118)),
            Selvedge = Chance(50) ? Tenths(2, 8) : Length.Zero,
            OneWay = oneWay,
            Grain = Pick(Grain.UpTheBolt, Grain.Railroaded, Grain.Either),
            Repeat = repeat
                ? new RepeatSpecification(
                    Tenths(20, 300),
                    across ? Tenths(30, 300) : null,
                    across ? Pick(DropKind.Straight, DropKind.Half) : DropKind.Straight
                )
                : null,
            LengthShrinkage = Fraction.Of(Chance(50) ? _random.Next(1, 100) : 0, 1000),
            WidthShrinkage = Fraction.Of(Chance(50) ? _random.Next(1, 100) : 0, 1000),
            Squaring = _workroom.Squaring,
            Sold = yards
                ? new SaleRule(SaleUnit.Yd, Pick(In(4.5m), In(9), In(12), In(36)), Chance(30) ? In(18) : Length.Zero)
                : new SaleRule(SaleUnit.M, Pick(Mm(100), Mm(250), Mm(500)), Chance(30) ? Mm(500) : Length.Zero),
            Price = new ItemPriceSpecification(
                new Money(_random.Next(100, 5000) / 100m, new Currency("USD")),
                yards ? SaleUnit.Yd : SaleUnit.M
            ),
        };
    }

    // Tenths of an inch as a maker would write them in the order's unit: eighths of an inch, halves of a centimetre, millimetres, and now
    // and then neither.
    private Length Tenths(int least, int most)
    {
        decimal inches = _random.Next(least, most + 1) / 10m;
        return Chance(5)
            ? In(inches) + Length.FromNanometres(_random.Next(1000))
            : _unit switch
            {
                LengthUnit.Inch => In(Math.Max(decimal.Round(inches * 8), 1) / 8),
                LengthUnit.Centimetre => Mm(5 * Math.Max(decimal.Round(inches * 25.4m / 5), 1)),
                _ => Mm(Math.Max(decimal.Round(inches * 25.4m), 1)),
            };
    }

    private bool Chance(int percent) => _random.Next(100) < percent;

    private T Pick<T>(params ReadOnlySpan<T> choices) => choices[_random.Next(choices.Length)];
}
