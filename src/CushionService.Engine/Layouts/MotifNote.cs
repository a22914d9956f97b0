using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Layouts;

/// <summary>Says that a quantity serves every position of a motif, and what it would save to know where it is.</summary>
public static class MotifNote
{
    /// <summary>The note; null where the motif is known, or nothing is matched.</summary>
    /// <param name="yardage">The quantity.</param>
    public static Violation? Of(Yardage yardage)
    {
        ArgumentNullException.ThrowIfNull(yardage);
        if (yardage.SoldAtBest is not { } best)
        {
            return null;
        }

        FabricSpecification fabric = yardage.Layout.Fabric;
        RepeatSpecification repeat = fabric.Repeat!;
        return new Violation(
            $"{fabric.Pointer}/repeat",
            "motif-unknown",
            MatchTexts.MotifUnknown(
                fabric.Name,
                yardage.SoldAmount,
                best < yardage.Sold ? yardage.SoldAmountAtBest : null,
                yardage.Sold - best,
                repeat.IsUnknownAcross,
                repeat.IsUnknownAlong
            )
        );
    }
}
