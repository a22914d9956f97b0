using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Layouts;

/// <summary>Says that a quantity serves every position of a motif, and what it would save to know where it is.</summary>
public static class MotifNote
{
    /// <summary>The note; null where the motif is known, or nothing is matched.</summary>
    /// <param name="yardage">The quantity.</param>
    /// <param name="unit">The unit of lengths.</param>
    public static Violation? Of(Yardage yardage, LengthUnit unit)
    {
        ArgumentNullException.ThrowIfNull(yardage);
        if (yardage.SoldAtBest is not { } best)
        {
            return null;
        }

        FabricSpecification fabric = yardage.Layout.Fabric;
        RepeatSpecification repeat = fabric.Repeat!;
        string from =
            !repeat.IsUnknownAcross ? "the cut"
            : !repeat.IsUnknownAlong ? "the left edge of the usable width"
            : "the left edge of the usable width and from the cut";
        string saved =
            best < yardage.Sold
                ? $"At its best position {fabric.Sold.Text(fabric.Sold.StepsFor(best))} would do, "
                    + $"{LengthText.Format(yardage.Sold - best, unit)} less"
                : "At its best position no less would do";
        return new Violation(
            $"{fabric.Pointer}/repeat",
            "motif-unknown",
            $"Where the first motif of {fabric.Name} is, is not said, so {yardage.SoldText} is enough wherever it is. {saved}. "
                + $"To plan for where it is, measure from {from} to its centre and give it as the repeat's motif."
        );
    }
}
