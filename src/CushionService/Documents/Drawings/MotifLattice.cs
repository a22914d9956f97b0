using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Documents.Drawings;

/// <summary>Where the motif of a fabric repeats, in the answer's units.</summary>
/// <param name="Length">Along the fabric, above 0; null when nothing is matched along.</param>
/// <param name="Width">Across the fabric, above 0; null when nothing is matched across.</param>
/// <param name="Drop">How the motif moves from column to column.</param>
/// <param name="X">Where a column is across the fabric.</param>
/// <param name="Start">Where the first row of that column is along the fabric.</param>
internal sealed record MotifLattice(double? Length, double? Width, DropKind Drop, double X = 0, double Start = 0)
{
    private const double FinestPitch = 1.5;

    /// <summary>Draws its rows as lines across each column, and its columns as lines along the fabric; nothing where the lines would
    /// run together in print.</summary>
    /// <param name="canvas">The drawing.</param>
    /// <param name="view">Where the fabric is in it.</param>
    public void Draw(Canvas canvas, FabricView view)
    {
        if (Math.Min(Length ?? double.MaxValue, Width ?? double.MaxValue) < FinestPitch * canvas.Mm)
        {
            return;
        }

        canvas.OpenStroked(Stroke.Lattice);
        if (Width is not { } width)
        {
            Rows(canvas, view, 0, view.Width, Start);
        }
        else
        {
            int last = (int)Math.Ceiling((view.Width - X) / width);
            for (int column = -(int)Math.Ceiling(X / width); column <= last; column++)
            {
                // A column reaches half a repeat to either side of its motif; with a half drop every other one starts
                // half a repeat higher.
                double left = Math.Max(0, X + (column - 0.5) * width);
                double right = Math.Min(view.Width, X + (column + 0.5) * width);
                if (left < right)
                {
                    canvas.Line(view.At(left, view.From), view.At(left, view.To));
                    Rows(canvas, view, left, right, Start + (Drop == DropKind.Half && column % 2 != 0 ? (Length ?? 0) / 2 : 0));
                }
            }
        }

        canvas.Close();
    }

    private void Rows(Canvas canvas, FabricView view, double left, double right, double start)
    {
        if (Length is not { } length)
        {
            return;
        }

        int last = (int)Math.Floor((view.To - start) / length);
        for (int row = (int)Math.Ceiling((view.From - start) / length); row <= last; row++)
        {
            double y = start + row * length;
            canvas.Line(view.At(left, y), view.At(right, y));
        }
    }
}
