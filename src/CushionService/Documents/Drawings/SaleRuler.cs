using CushionService.Engine.Measures;

namespace CushionService.Documents.Drawings;

/// <summary>The length of the fabric in the unit that it is sold in, marked along its side by eighths of a yard or tenths of a
/// metre.</summary>
internal static class SaleRuler
{
    private const double ClosestTicks = 1.1;
    private const double Type = 2.3;
    private const double LongTick = 2;
    private const double ShortTick = 1.1;

    /// <summary>Draws the ruler beside the left side of the fabric.</summary>
    /// <param name="canvas">The drawing.</param>
    /// <param name="view">The fabric.</param>
    /// <param name="units">The answer's units.</param>
    /// <param name="sold">Yards or metres.</param>
    /// <param name="gap">From the fabric to the ruler, in millimetres.</param>
    public static void Draw(Canvas canvas, FabricView view, OrderUnits units, SaleUnit sold, double gap)
    {
        LengthUnit unit = sold == SaleUnit.M ? LengthUnit.Metre : LengthUnit.Yard;
        Length step = Length.From(unit == LengthUnit.Metre ? 0.1m : 0.125m, unit);
        double pitch = units.From(step) / canvas.Mm;
        int every = Multiple(unit, ClosestTicks / pitch);
        int labelled = Multiple(unit, (view.Turned ? 15 : 5) / pitch);
        // A figure is always at a mark.
        while (labelled % every != 0)
        {
            labelled += every;
        }

        canvas.OpenStroked(Stroke.Mark);
        canvas.Line(Beside(view.From, gap), Beside(view.To, gap));
        Each((n, y) => canvas.Line(Beside(y, gap), Beside(y, gap + (n % labelled == 0 ? LongTick : ShortTick))));
        canvas.Close();
        Each(
            (n, y) =>
            {
                if (n % labelled == 0)
                {
                    Spot at = Beside(y, gap + LongTick + 0.8);
                    canvas.Text(
                        view.Turned ? at : at + new Spot(0, 0.35 * Type * canvas.Mm),
                        LengthText.Format(n * step, unit),
                        Type * canvas.Mm,
                        view.Turned ? "middle" : "end"
                    );
                }
            }
        );

        Spot Beside(double y, double millimetres) => view.At(-millimetres * canvas.Mm, y);

        void Each(Action<long, double> draw)
        {
            // A billionth less, so that rounding does not lose a mark that lies on the start.
            double first = Math.Ceiling(view.From / units.From(step) / every - 1e-9);
            for (long n = (long)first * every; units.From(n * step) <= view.To; n += every)
            {
                draw(n, units.From(n * step));
            }
        }
    }

    // Steps that people count in: halves of a yard on, or ones, twos and fives of tenths of a metre.
    private static int Multiple(LengthUnit unit, double atLeast)
    {
        int size = 1;
        for (int i = 0; size < atLeast; i++)
        {
            size =
                unit == LengthUnit.Yard ? (size < 8 ? size * 2 : size / 8 * 16)
                : i % 3 == 1 ? size / 2 * 5
                : size * 2;
        }

        return size;
    }
}
