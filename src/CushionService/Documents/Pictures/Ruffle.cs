using CushionService.Engine.Scenes;

namespace CushionService.Documents.Pictures;

/// <summary>A ruffle along an edge as it is drawn: where it is gathered, and its waving outer edge.</summary>
internal sealed class Ruffle
{
    // A choice of ours, no source: how far a ruffle hangs for each length that it reaches out, how deep its waves are as
    // a share of its depth, and how many points are drawn of each wave.
    private const double Droop = 0.3;
    private const double Wave = 0.13;
    private const int Samples = 4;

    /// <summary>The ruffle of an edge.</summary>
    /// <param name="line">The edge that it is gathered to.</param>
    /// <param name="outward">The way out at each of its points.</param>
    /// <param name="depth">How far it reaches out, in millimetres.</param>
    public Ruffle(SceneLine line, Vector[] outward, double depth)
    {
        double length = 0;
        for (int i = 0; i + 1 < line.Points.Length; i++)
        {
            length += (line.Points[i + 1] - line.Points[i]).Size;
        }

        // About as many waves as the edge is long in depths of the ruffle, and at least two.
        int count = Samples * Math.Clamp((int)Math.Round(length / depth), 2, 16);
        double at = 0;
        int from = 0;
        for (int i = 0; i <= count; i++)
        {
            double goal = length * i / count;
            while (from + 2 < line.Points.Length && at + (line.Points[from + 1] - line.Points[from]).Size < goal)
            {
                at += (line.Points[from + 1] - line.Points[from]).Size;
                from++;
            }

            Vector side = line.Points[from + 1] - line.Points[from];
            double share = Math.Clamp((goal - at) / side.Size, 0, 1);
            Vector way = (outward[from] + share * (outward[from + 1] - outward[from])).Unit(),
                inner = line.Points[from] + share * side;
            double wave = 1 - Wave * (1 - Math.Cos(2 * Math.PI * i / Samples)) / 2;
            Inner.Add(inner);
            Outward.Add(way);
            Outer.Add(inner + wave * depth * (way - Droop * Vector.Up).Unit());
        }
    }

    /// <summary>Points along the seam.</summary>
    public List<Vector> Inner { get; } = [];

    /// <summary>Points along its outer edge.</summary>
    public List<Vector> Outer { get; } = [];

    /// <summary>The way out at each of them.</summary>
    public List<Vector> Outward { get; } = [];
}
