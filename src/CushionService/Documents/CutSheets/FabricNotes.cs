using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Documents.CutSheets;

/// <summary>What to know of a fabric when it is fetched or cut: its dye lot, whose it is, and what is left of it.</summary>
internal static class FabricNotes
{
    private const int MostRemnants = 3;

    /// <summary>Of what is bought; nothing for a material that is no fabric.</summary>
    public static IEnumerable<string> Of(Job job, MaterialAnswer material) =>
        material.Kind == MaterialKind.Fabric ? Of(job, material.Item) : [];

    /// <summary>Of a fabric.</summary>
    public static IEnumerable<string> Of(Job job, string id)
    {
        if (job.Fabrics.FirstOrDefault(one => one.Id == id) is not { } fabric)
        {
            yield break;
        }

        if (fabric.CustomerOwned == true)
        {
            yield return job.Say(SheetTexts.Owned(Brought(job, fabric)));
        }

        if (fabric.Lot is { Length: > 0 } lot)
        {
            yield return job.Say(SheetTexts.Lot(lot));
        }
    }

    /// <summary>The largest rectangles that are left of a fabric; null for none.</summary>
    public static string? Remnants(Job job, string id) =>
        job.Quote.Yardage.FirstOrDefault(line => line.Fabric == id)?.Remnants is { Count: > 0 } left
            ? job.Say(SheetTexts.Remnants([.. left.Take(MostRemnants).Select(one => job.Units.Size(one.Width, one.Length))]))
            : null;

    private static string? Brought(Job job, Fabric fabric) =>
        fabric.Brought is { } brought && brought.TryRead(job.Units.Unit, out Engine.Measures.Length length)
            ? job.Units.Text(job.Units.From(length))
            : null;
}
