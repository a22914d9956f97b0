using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Layouts;

/// <summary>Says where a customer has brought less fabric than an order takes.</summary>
public static class BroughtNote
{
    /// <summary>The note; null where there is enough, or nothing is known of what was brought.</summary>
    /// <param name="yardage">The quantity.</param>
    /// <remarks>The length that is needed counts, not the step that a shop would sell it in: a customer's piece is not cut off a
    /// bolt.</remarks>
    public static Violation? Of(Yardage yardage)
    {
        ArgumentNullException.ThrowIfNull(yardage);
        FabricSpecification fabric = yardage.Layout.Fabric;
        Length needed = FabricSale.Needed(fabric, yardage.Layout.Length, yardage.Layout.Start);
        return fabric.Brought is { } brought && brought < needed
            ? new Violation(
                $"{fabric.Pointer}/brought",
                "too-little-brought",
                MatchTexts.TooLittleBrought(fabric.Name, needed, brought, needed - brought)
            )
            : null;
    }
}
