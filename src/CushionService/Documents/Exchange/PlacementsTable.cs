using CushionService.Contract;
using CushionService.Contract.Answers;

namespace CushionService.Documents.Exchange;

/// <summary>Where every copy of every piece lies as a table, a line for each, in the order's unit.</summary>
internal static class PlacementsTable
{
    /// <summary>The table.</summary>
    /// <param name="answer">The layouts and the pieces that they place.</param>
    public static string Write(LayoutsAnswer answer)
    {
        var table = new CsvTable("fabric", "number", "piece", "label", "copy", "x", "y", "rotation", "width", "length", "units");
        Dictionary<string, int> numbers = [];
        for (int i = 0; i < answer.Pieces.Count; i++)
        {
            numbers.TryAdd(answer.Pieces[i].Id, i);
        }

        foreach (LayoutAnswer layout in answer.Layouts)
        {
            foreach (PlacementAnswer placement in layout.Placements)
            {
                int number = numbers[placement.Piece];
                table.Add(
                    layout.Fabric,
                    CsvTable.Number(number + 1),
                    placement.Piece,
                    answer.Pieces[number].Label,
                    CsvTable.Number(placement.Copy),
                    CsvTable.Number(placement.X),
                    CsvTable.Number(placement.Y),
                    CsvTable.Number(placement.Rotation),
                    CsvTable.Number(placement.Width),
                    CsvTable.Number(placement.Length),
                    Words<Units>.Of(answer.Units)
                );
            }
        }

        return table.ToString();
    }
}
