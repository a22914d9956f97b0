using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Nesting;

namespace CushionService.Documents.Exchange;

/// <summary>The pieces to cut as a table, a line for each, in the order's unit.</summary>
internal static class PiecesTable
{
    /// <summary>The table.</summary>
    /// <param name="answer">The pieces; their places in the list are the numbers of all drawings.</param>
    public static string Write(PiecesAnswer answer)
    {
        var table = new CsvTable(
            "number",
            "id",
            "label",
            "cushion",
            "part",
            "fabric",
            "quantity",
            "width",
            "length",
            "units",
            "shape",
            "rotation",
            "grain",
            "because"
        );
        for (int i = 0; i < answer.Pieces.Count; i++)
        {
            PieceAnswer piece = answer.Pieces[i];
            table.Add(
                CsvTable.Number(i + 1),
                piece.Id,
                piece.Label,
                piece.Cushion,
                piece.Part,
                piece.Fabric,
                CsvTable.Number(piece.Quantity),
                CsvTable.Number(piece.Width),
                CsvTable.Number(piece.Length),
                Words<Units>.Of(answer.Units),
                piece.Points is null ? "rectangle" : "outline",
                Words<Rotations>.Of(piece.Rotation),
                Words<Grain>.Of(piece.Grain),
                piece.Because
            );
        }

        return table.ToString();
    }
}
