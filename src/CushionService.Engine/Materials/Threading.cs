using CushionService.Engine.Cutting;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Additions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Materials;

/// <summary>How much is sewn, and how much thread that takes.</summary>
public static class Threading
{
    /// <summary>The length of all machine stitching in a cover: each seam once, strip joins from raw edge to raw edge, a zipper along both
    /// its tapes, hems, stitching lines, gathering rows, the run round a welt's cord, topstitching, the second row of a French seam, the
    /// handle's edges and boxed Xs, tapes along both edges, bindings once, ties and straps along their length, and what is
    /// basted.</summary>
    /// <param name="cushion">The cushion.</param>
    /// <param name="pattern">Its pattern.</param>
    public static Length Stitching(CushionSpecification cushion, Pattern pattern)
    {
        var total = Length.Zero;
        foreach (Seam seam in pattern.Seams)
        {
            Length length = pattern.LengthOf(seam);
            total += seam.Kind switch
            {
                // Sewn before the strip is joined to anything, so through both allowances.
                SeamKind.StripJoin => length + 2 * cushion.SeamAllowance,
                SeamKind.Zipper => 2 * length,
                // Its rows of gathering are counted along the ruffle, the row that holds it as basting.
                SeamKind.Gathered => Length.Zero,
                _ => length,
            };
        }

        foreach (Panel panel in pattern.Panels)
        {
            foreach (Edge edge in panel.Edges)
            {
                total += edge.Finish.Kind == FinishKind.Hem ? edge.Length : Length.Zero;
            }

            foreach (PanelMark mark in panel.Marks)
            {
                total += mark is { Kind: MarkKind.StitchLine, Purpose: not MarkPurpose.LapZipper, To: { } to }
                    ? new Geometry.Segment(mark.From, to).Length
                    : Length.Zero;
            }
        }

        total += AdditionStitching.Of(cushion, pattern);
        return cushion.Handle is { } handle
            ? total + handle.Sides.Length * (2 * handle.Length + 2 * BoxedX(handle.Width, handle.Width))
            : total;
    }

    /// <summary>The raw edges that are finished so that they do not fray: every edge with an allowance, of every copy, along its cut line,
    /// but for those that a French seam encloses.</summary>
    /// <param name="cushion">The cushion.</param>
    /// <param name="pattern">Its pattern.</param>
    /// <returns>Of one cover. Additions such as ties and pockets are left out: their edges are turned under. So is an inner cover: it stays
    /// shut, as a cover that is closed by hand does.</returns>
    public static Length RawEdges(CushionSpecification cushion, Pattern pattern)
    {
        var total = Length.Zero;
        foreach ((Panel panel, bool[] raw) in Raw(cushion, pattern))
        {
            for (var i = 0; i < raw.Length; i++)
            {
                total += raw[i] ? CutEdge.Along(panel, i) : Length.Zero;
            }
        }

        return total;
    }

    /// <summary>The panels of one cover, and which of their edges stay raw inside it.</summary>
    internal static IEnumerable<(Panel Panel, bool[] Raw)> Raw(CushionSpecification cushion, Pattern pattern)
    {
        HashSet<EdgeRef> enclosed = cushion.Trim.Edging is FrenchSeamSpecification french
            ? [.. french.At.SelectMany(place => FrenchSeams(pattern, place)).SelectMany(seam => seam.One.Concat(seam.Other))]
            : [];
        return pattern
            .Panels.Where(panel => !panel.IsAddition && !panel.Part.IsInner)
            .Select(panel =>
                (
                    panel,
                    panel
                        .Edges.Select(edge =>
                            edge.Finish.Kind is FinishKind.Seam or FinishKind.ZipperTurnUnder
                            && !enclosed.Contains(new EdgeRef(panel.Part, edge.Name))
                        )
                        .ToArray()
                )
            );
    }

    // The seams round a face; those within it are sewn once.
    private static IEnumerable<Seam> FrenchSeams(Pattern pattern, EdgingPlace place) =>
        pattern.Seams.Where(seam =>
            EdgingLoop.HasEdging(pattern, seam.One[0], place) != EdgingLoop.HasEdging(pattern, seam.Other[0], place)
        );

    /// <summary>Thread to finish a length of raw edge, as a multiple of it: of an overedge (type 504) by its geometry, of a zigzag (type
    /// 304) about 7 (from memory, no source); 0 where it takes none.</summary>
    /// <param name="finish">How raw edges are finished.</param>
    /// <param name="workroom">Thickness, stitch length and bight, where it names a stitch; else the usual ones and 1 mm
    /// of fabric.</param>
    public static decimal EdgeRatio(RawEdgeFinish finish, WorkroomPractice workroom)
    {
        StitchPractice usual = workroom.Stitches;
        return finish switch
        {
            RawEdgeFinish.Overedge => Consumption(
                StitchType.Overedge,
                (workroom.Stitch?.Thickness ?? Length.FromMillimetres(1)).In(LengthUnit.Millimetre),
                1 / (workroom.Stitch?.StitchLength ?? usual.StitchLength).In(LengthUnit.Millimetre),
                (workroom.Stitch?.Bight is { Nanometres: > 0 } bight ? bight : usual.Bight).In(LengthUnit.Millimetre)
            ),
            RawEdgeFinish.Zigzag => 7,
            _ => 0,
        };
    }

    /// <summary>A rectangle of stitching with both diagonals: 2(a + b) + 2√(a² + b²) (general geometry).</summary>
    /// <param name="a">One side.</param>
    /// <param name="b">The other side.</param>
    public static Length BoxedX(Length a, Length b)
    {
        double diagonal = Math.Sqrt(((double)a.Nanometres * a.Nanometres) + ((double)b.Nanometres * b.Nanometres));
        return 2 * (a + b) + Length.FromNanometres((long)Math.Round(2 * diagonal));
    }

    /// <summary>Thread in one unit of seam by stitch type, from the geometry of the stitch (textilecalculations.com, calculate amount of
    /// sewing thread consumption): 101: 3 + 2TS; 301: 2 + 2TS; 401: 4 + 2TS; 504: 3 + 4WS + 4TS; 515 is 401 and 504 side by side (ISO 4915,
    /// as in the IASRI course on stitches).</summary>
    /// <param name="type">The stitch.</param>
    /// <param name="thickness">T, thickness of what is sewn, in the unit of the seam.</param>
    /// <param name="stitches">S, stitches in one unit of seam.</param>
    /// <param name="bight">W, width of an overedge stitch, in the unit of the seam.</param>
    public static decimal Consumption(StitchType type, decimal thickness, decimal stitches, decimal bight = 0) =>
        type switch
        {
            StitchType.Chainstitch => 3 + (2 * thickness * stitches),
            StitchType.Lockstitch => 2 + (2 * thickness * stitches),
            StitchType.DoubleChainstitch => 4 + (2 * thickness * stitches),
            StitchType.Overedge => 3 + (4 * bight * stitches) + (4 * thickness * stitches),
            StitchType.SafetyStitch => Consumption(StitchType.DoubleChainstitch, thickness, stitches)
                + Consumption(StitchType.Overedge, thickness, stitches, bight),
            _ => throw new ArgumentOutOfRangeException(nameof(type)),
        };

    /// <summary>Thread in a length of seam, as a multiple of it: the workroom's own figure, or that of its stitch, or the
    /// lockstitch's.</summary>
    /// <param name="workroom">The workroom.</param>
    /// <returns>Thread by length of seam, without waste.</returns>
    public static decimal Ratio(WorkroomPractice workroom) =>
        workroom switch
        {
            { ThreadRatio: { } ratio } => ratio,
            { Stitch: { } stitch } => Consumption(
                stitch.Type,
                stitch.Thickness.In(LengthUnit.Millimetre),
                1 / stitch.StitchLength.In(LengthUnit.Millimetre),
                stitch.Bight.In(LengthUnit.Millimetre)
            ),
            _ => WorkroomPractice.LockstitchRatio,
        };

    /// <summary>Thread for a length of stitching: × ratio × (1 + waste).</summary>
    /// <param name="stitching">Length of what is sewn.</param>
    /// <param name="ratio">Thread in one unit of it.</param>
    /// <param name="waste">The share that is lost at starts, ends and bobbins, 0.25 for a quarter.</param>
    /// <returns>Rounded up to a nanometre.</returns>
    public static Length Thread(Length stitching, decimal ratio, decimal waste) =>
        Length.FromNanometres((long)Math.Ceiling(stitching.Nanometres * ratio * (1 + waste)));
}
