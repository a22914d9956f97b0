using CushionService.Nesting;
using CushionService.Nesting.Outlines;
using CushionService.Nesting.Solving;

namespace CushionService.Benchmarks.Outlines;

/// <summary>The verb <c>circles</c>: equal discs on strips of 1 to 3 diameters; 2 and 3 against the geometric optimum,
/// 4 to 12 against what ten times the steps find.</summary>
internal static class DiscOptima
{
    private const double Diameter = 400_000;

    public static void Run()
    {
        for (var discs = 2; discs <= 12; discs++)
        {
            var (worst, at, sum, count) = (0.0, 1.0, 0.0, 0);
            for (var share = 1.0; share <= 3.001; share += discs <= 3 ? 0.05 : 0.25)
            {
                var piece = OutlinePieces.Disc(Diameter, discs);
                var problem = new StripProblem { Width = Math.Max(piece.Width, (long)Math.Round(share * Diameter)), Pieces = [piece] };
                var layout = Nester.Nest(problem, Effort.Standard);
                double reference =
                    discs <= 3
                        ? Optimum(discs, piece.Width, problem.Width)
                        : OutlineKernel.Search(problem, layout, 10 * layout.Steps, default).Length;
                var over = 100 * (layout.Length / reference - 1);
                (sum, count) = (sum + over, count + 1);
                (worst, at) = over > worst ? (over, share) : (worst, at);
            }

            Console.WriteLine(
                $"{discs, 2} discs, {count} widths: over "
                    + $"{(discs <= 3 ? "the geometric optimum" : "ten times the steps")} {sum / count:F3} % in the mean, "
                    + $"{worst:F3} % at most (at {at:F2} diameters)"
            );
        }
    }

    /// <summary>Least length for two or three discs of diameter d on a strip of width w (plane geometry).</summary>
    private static double Optimum(int discs, double d, double w)
    {
        var room = Math.Min(w - d, 2 * d);
        if (discs == 2)
        {
            return d + Math.Sqrt(Math.Max(0, d * d - room * room));
        }

        if (room >= d)
        {
            return d + Math.Sqrt(d * d - room * room / 4);
        }

        return room <= d * Math.Sqrt(3) / 2
            ? d + Math.Max(d, 2 * Math.Sqrt(d * d - room * room))
            : d + d * Math.Cos(Math.PI / 6 - Math.Acos(room / d));
    }
}
