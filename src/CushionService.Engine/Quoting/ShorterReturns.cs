using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Quoting;

/// <summary>Shortens the returns of a closure's section that the fabric is too narrow for, so that no join passes through the
/// closure.</summary>
/// <remarks>A section along a side W with returns r is cut W + 2r + 2s long (follows from the seam line). Shorter returns come before a
/// joined section (common practice, no source).</remarks>
internal static class ShorterReturns
{
    /// <summary>The cushion with returns that its fabric takes; the same cushion where they fit, or where the side alone is too
    /// long.</summary>
    /// <param name="cushion">The cushion.</param>
    /// <param name="usable">How long a strip of its sides' fabric may be cut.</param>
    public static CushionSpecification Of(CushionSpecification cushion, Length usable)
    {
        Length turn = Return(cushion.Closure);
        if (turn == Length.Zero || cushion.Closure.Side == Side.Bottom)
        {
            return cushion;
        }

        Length room = usable - 2 * cushion.SeamAllowance - cushion.SideLength(cushion.Closure.Side);
        if (room >= 2 * turn || room < Length.Zero)
        {
            return cushion;
        }

        // Returns stay equal, so that the section sits in the middle of its side; below the workroom's shortest they are left out.
        Length each = Length.FromNanometres(room.Nanometres / 2);
        each = each < cushion.Practice.Closures.ShortestReturn ? Length.Zero : each;
        return cushion with
        {
            Closure = cushion.Closure switch
            {
                ZipperClosure zipper => zipper with { Return = each },
                OverlappingClosure strips => strips with { Return = each },
                var other => other,
            },
        };
    }

    /// <summary>Says what was shortened.</summary>
    /// <param name="cushion">A cushion that <see cref="Of"/> has changed.</param>
    public static Violation Said(CushionSpecification cushion) =>
        new($"{cushion.Pointer}/closure", "returns-shortened", DraftTexts.ReturnsShortened(cushion.Name, Return(cushion.Closure)));

    // How far the section runs on round each corner of its side; zero for closures without a section.
    private static Length Return(ClosureSpecification closure) =>
        closure switch
        {
            ZipperClosure zipper => zipper.Return,
            OverlappingClosure strips => strips.Return,
            _ => Length.Zero,
        };
}
