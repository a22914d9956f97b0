using CushionService.Nesting;

namespace CushionService.Documents.Drawings;

/// <summary>What is in the margins of a sheet at true size: whose it is, where it goes, and a measure to check the printer
/// by.</summary>
internal static class TileNotes
{
    private const double Check = 50;

    /// <summary>Height of the title's type, in millimetres.</summary>
    public const double Type = 3;

    public static void Draw(Canvas canvas, Paper paper, string title, string place, Rotations rotation)
    {
        canvas.Text(new Spot(TileGrid.Margin + 8, 9), title, Type, bold: true);
        canvas.Text(new Spot(TileGrid.Margin + 8, 5.5), place, Type - 0.4);
        var from = new Spot(TileGrid.Margin + 8, paper.Height - 8);
        canvas.OpenStroked(Stroke.Mark);
        canvas.Line(from, from + new Spot(Check, 0));
        canvas.Line(from - new Spot(0, 1.5), from + new Spot(0, 1.5));
        canvas.Line(from + new Spot(Check, -1.5), from + new Spot(Check, 1.5));
        canvas.Close();
        canvas.Text(from + new Spot(Check + 3, 1), "must measure 50 mm: print at 100 %, do not fit to the page", Type - 0.4);
        var sign = new Spot(paper.Width - TileGrid.Margin - 14, 7);
        GrainArrow.Draw(canvas, sign, new Spot(0, -1), 6, rotation);
        canvas.Text(sign + new Spot(-5, 1), GrainArrow.Meaning(rotation), Type - 0.4, "end");
    }
}
