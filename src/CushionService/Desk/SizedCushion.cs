using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Intake;
using Outline = CushionService.Contract.Orders.Outline;

namespace CushionService.Desk;

/// <summary>An order in which one cushion has other sizes, in whole cutting steps; the rest of the order is as it was
/// sent.</summary>
internal sealed class SizedCushion
{
    // The order, the cushion's place in it, and which of its sizes change.
    private readonly Order _order;
    private readonly int _at;
    private readonly FreeSize _free;
    private readonly OrderSpecification _specified;
    private readonly Outline _outline;
    private readonly Length _leading;

    private SizedCushion(Order order, OrderSpecification specified, int at, FreeSize free)
    {
        (_order, _specified, _at, _free, _outline) = (order, specified, at, free, order.Cushions![at].Outline!);
        Engine.Specifications.Outlines.Outline drawn = specified.Cushions[at].Outline;
        _leading = free switch
        {
            FreeSize.Width => drawn.Width,
            FreeSize.Depth => drawn.Depth,
            _ => Length.Max(drawn.Width, drawn.Depth),
        };
        Steps = (int)Math.Max(_leading.Nanometres / Step.Nanometres, 1);
    }

    /// <summary>The leading size as ordered, in whole cutting steps, rounded down; at least 1. The leading size is the
    /// one that changes: of both, the longer.</summary>
    public int Steps { get; }

    // Half a cutting step could not be cut.
    private Length Step => _specified.Workroom.CuttingStep;

    /// <summary>Each way to size a cushion of a sound order: as a whole and, where the outline has them, in width or
    /// depth alone.</summary>
    /// <param name="order">The order as it was sent.</param>
    /// <param name="specified">The same, specified.</param>
    /// <param name="at">The cushion, from 0.</param>
    public static IEnumerable<(FreeSize Free, SizedCushion Sizes)> Ways(Order order, OrderSpecification specified, int at)
    {
        yield return (FreeSize.Both, new SizedCushion(order, specified, at, FreeSize.Both));
        if (order.Cushions![at].Outline is { Width: not null, Depth: not null })
        {
            yield return (FreeSize.Width, new SizedCushion(order, specified, at, FreeSize.Width));
            yield return (FreeSize.Depth, new SizedCushion(order, specified, at, FreeSize.Depth));
        }
    }

    /// <summary>The order with the cushion's leading size of that many cutting steps. In proportion, every other size
    /// goes down to a whole step; corners of a polygon do not, since rounding would bend its edges.</summary>
    /// <param name="steps">At least 1.</param>
    public Order At(int steps) =>
        _order with
        {
            Cushions = [.. _order.Cushions!.Select((cushion, i) => i == _at ? cushion with { Outline = OutlineAt(steps) } : cushion)],
        };

    /// <summary>Finished width and depth over all with that many cutting steps, of a size that keeps every
    /// rule.</summary>
    /// <param name="steps">At least 1.</param>
    public (Length Width, Length Depth) SizesAt(int steps)
    {
        Findings findings = new(_specified.Unit, new FindingList());
        Engine.Specifications.Outlines.Outline drawn = OutlineIntake.Read(OutlineAt(steps), findings)!;
        return (drawn.Width, drawn.Depth);
    }

    // Every size times the new leading size over the ordered one.
    private Outline OutlineAt(int steps)
    {
        Length leading = steps * Step;
        return _free switch
        {
            FreeSize.Width => _outline with { Width = Written(leading) },
            FreeSize.Depth => _outline with { Depth = Written(leading) },
            _ => _outline with
            {
                Width = Scaled(_outline.Width),
                Depth = Scaled(_outline.Depth),
                Diameter = Scaled(_outline.Diameter),
                CornerRadius = Scaled(_outline.CornerRadius),
                FrontWidth = Scaled(_outline.FrontWidth),
                BackWidth = Scaled(_outline.BackWidth),
                BackOffset = Scaled(_outline.BackOffset),
                EarWidth = Scaled(_outline.EarWidth),
                EarDepth = Scaled(_outline.EarDepth),
                NotchWidth = Scaled(_outline.NotchWidth),
                NotchDepth = Scaled(_outline.NotchDepth),
                SideLength = Scaled(_outline.SideLength),
                Points = _outline.Points is { } points
                    ? [.. points.Select(point => new Corner { X = Exactly(point.X), Y = Exactly(point.Y) })]
                    : null,
            },
        };

        Measure? Scaled(Measure? size) =>
            Times(size) is { } scaled ? Written(Length.FromNanometres(scaled - scaled % Step.Nanometres)) : null;

        Measure? Exactly(Measure? coordinate) => Times(coordinate) is { } scaled ? Written(Length.FromNanometres(scaled)) : null;

        // In nanometres. The product of two lengths needs more than 64 bits.
        long? Times(Measure? size) =>
            size is { } written && written.TryRead(_specified.Unit, out Length length)
                // Rounded down, so that no scaled size is larger than its share of the leading one.
                ? (long)((Int128)length.Nanometres * leading.Nanometres / _leading.Nanometres)
                : null;
    }

    // Millimetres write every length exactly, whatever the unit of the order.
    private static Measure Written(Length length) => Measure.Of(FormattableString.Invariant($"{length.In(LengthUnit.Millimetre)} mm"));
}
