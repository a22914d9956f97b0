using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Layouts;

/// <summary>Says that a fabric is bought in several cuts, whose colours may differ.</summary>
public static class CutsNote
{
    // A bolt holds about as much; longer lengths come in several cuts (common practice, no source).
    private static readonly Length BoltInYards = Length.From(50, LengthUnit.Yard),
        BoltInMetres = Length.From(45, LengthUnit.Metre);

    /// <summary>The notes, one for each fabric that several lengths are bought of, or one that is longer than a bolt.</summary>
    /// <param name="yardages">All lengths that are bought.</param>
    public static IEnumerable<Violation> Of(IEnumerable<Yardage> yardages) =>
        yardages.GroupBy(yardage => yardage.Layout.Fabric.Id).Select(lengths => Note([.. lengths])).OfType<Violation>();

    private static Violation? Note(Yardage[] lengths)
    {
        FabricSpecification fabric = lengths[0].Layout.Fabric;
        Length bolt = fabric.Sold.LengthUnit == LengthUnit.Metre ? BoltInMetres : BoltInYards;
        Yardage longest = lengths.MaxBy(length => length.Sold)!;
        return lengths.Length > 1
                ? new Violation($"{fabric.Pointer}/sold", "several-cuts", YardageTexts.SeveralCuts(fabric.Name, lengths.Length))
            : fabric.Sold.IsByTheRoll ? OfRolls(fabric, longest)
            : longest.Sold > bolt
                ? new Violation($"{fabric.Pointer}/sold", "several-cuts", YardageTexts.LongerThanBolt(fabric.Name, longest.SoldAmount))
            : null;
    }

    // One roll is one cut, however long it is.
    private static Violation? OfRolls(FabricSpecification fabric, Yardage length)
    {
        long rolls = fabric.Sold.StepsFor(length.Sold);
        SaleAmount roll = fabric.Sold.Amount(1);
        return rolls == 1
            ? null
            : new Violation(
                $"{fabric.Pointer}/sold",
                "several-cuts",
                length.Layout.CrossesRolls
                    ? YardageTexts.AcrossRolls(fabric.Name, rolls, roll)
                    : YardageTexts.SeveralRolls(fabric.Name, rolls, roll)
            );
    }
}
