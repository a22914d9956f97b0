using CushionService.Engine.Scenes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Documents.Pictures;

/// <summary>Draws what runs along a seam as a line: a welt, piping, a cord, a braid, a fringe, topstitching.</summary>
/// <param name="sketch">Takes the shapes.</param>
/// <param name="fabric">The colour of what is made of fabric, and of bought trims.</param>
internal sealed class EdgePainter(Sketch sketch, Tint fabric)
{
    // In units of the picture: no cord is drawn thinner than can be seen, and each has a dark line on both its sides.
    private const double Thinnest = 4.5;
    private const double Halo = 3.4;
    private const double Fine = 1.6;

    // From strand to strand of a fringe, and from turn to turn of a twisted cord, in units of the picture.
    private const double Strand = 7;
    private const double Twist = 12;

    /// <summary>Whether an edging is drawn along its seam.</summary>
    /// <param name="edging">Others, such as ruffles, are surfaces and not lines.</param>
    public static bool Draws(EdgingSpecification edging) =>
        edging is SeamStripSpecification or BoughtTrimSpecification or TopstitchSpecification;

    /// <summary>Draws a stretch of an edging.</summary>
    /// <param name="edging">The edging.</param>
    /// <param name="line">Points along the seam.</param>
    /// <param name="outward">The way out of the face at each of them, in its surface.</param>
    /// <param name="hangs">Whether a fringe hangs down from a wall, and does not lie flat round a pillow.</param>
    public void Along(EdgingSpecification edging, IReadOnlyList<Vector> line, IReadOnlyList<Vector> outward, bool hangs)
    {
        switch (edging)
        {
            case WeltSpecification welt:
                Round(line, welt.CordDiameter.Nanometres / 1e6);
                break;
            case FlatPipingSpecification piping:
                Round(line, piping.Depth.Nanometres / 1e6);
                break;
            case BoughtTrimSpecification { Trim: EdgingKind.Fringe } fringe:
                Fringe(line, outward, fringe.Size.Nanometres / 1e6, hangs);
                break;
            case BoughtTrimSpecification trim:
                Round(line, trim.Size.Nanometres / 1e6);
                Twisted(line, outward, trim.Size.Nanometres / 2e6, trim.Trim == EdgingKind.LipCord ? 1 : 0);
                break;
            case TopstitchSpecification topstitch:
                foreach (int row in Enumerable.Range(1, topstitch.Rows))
                {
                    // Rows lie inside the face, each as far from the one before as the first is from the seam.
                    double inset = row * topstitch.Distance.Nanometres / 1e6;
                    sketch.Draw(
                        line.Select((point, i) => point - (inset * outward[i])),
                        new Ink(null, 1, Tint.Line, Fine) { IsDashed = true }
                    );
                }

                break;
        }
    }

    private void Round(IReadOnlyList<Vector> line, double size)
    {
        double width = Math.Max(Thinnest, size * sketch.Scale);
        sketch.Draw(line, new Ink(null, 1, Tint.Line, Math.Round(width + Halo, 1)));
        sketch.Draw(line, new Ink(null, 1, fabric, Math.Round(width, 1)));
    }

    // Short strokes across: aslant on a cord, straight on a braid.
    private void Twisted(IReadOnlyList<Vector> line, IReadOnlyList<Vector> outward, double half, double slant)
    {
        foreach ((Vector at, Vector way, Vector along) in Steps(line, outward, Twist))
        {
            Vector across = half * (way + (slant * along)).Unit();
            sketch.Draw([at - across, at + across], new Ink(null, 1, Tint.Line, Fine));
        }
    }

    private void Fringe(IReadOnlyList<Vector> line, IReadOnlyList<Vector> outward, double depth, bool hangs)
    {
        Vector[] ends = [.. line.Select((point, i) => point + Hang(outward[i]))];
        sketch.Fill([.. line, .. ends.Reverse()], new Ink(fabric, 0.55));
        foreach ((Vector at, Vector way, _) in Steps(line, outward, Strand))
        {
            sketch.Draw([at, at + Hang(way)], new Ink(null, 1, Tint.Line, Fine));
        }

        sketch.Draw(line, new Ink(null, 1, Tint.Line, 2 * Fine));

        Vector Hang(Vector way) => depth * (hangs ? (0.12 * way) - Vector.Up : way).Unit();
    }

    // Points at even distances along a line.
    private IEnumerable<(Vector At, Vector Outward, Vector Along)> Steps(
        IReadOnlyList<Vector> line,
        IReadOnlyList<Vector> outward,
        double apart
    )
    {
        double step = apart / sketch.Scale,
            next = step / 2,
            walked = 0;
        for (int i = 0; i + 1 < line.Count; i++)
        {
            Vector side = line[i + 1] - line[i];
            for (; next <= walked + side.Size && side.Size > 0; next += step)
            {
                double share = (next - walked) / side.Size;
                yield return (line[i] + (share * side), (outward[i] + (share * (outward[i + 1] - outward[i]))).Unit(), side.Unit());
            }

            walked += side.Size;
        }
    }
}
