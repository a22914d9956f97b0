using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Additions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Instructions;

/// <summary>The steps of sewing one cover.</summary>
internal sealed class CoverSteps(
    LengthUnit unit,
    CushionSpecification cushion,
    Pattern pattern,
    IReadOnlyList<CutPiece> pieces,
    Length edgeDistance,
    ImmutableArray<Step>.Builder steps
)
{
    public void Add()
    {
        Hem();
        foreach ((string text, PartName part) in PanelSteps.Before(cushion, pattern, unit))
        {
            Say(text, part);
        }

        ImmutableArray<Seam>[] runs = [.. Runs()];
        foreach (ImmutableArray<Seam> run in runs.Where(JoinsFace))
        {
            steps.Add(Sew(run, closesLoop: false, last: false));
        }

        SewHandle();
        var additions = new AdditionSteps(cushion, pattern, unit);
        foreach (
            (string text, ImmutableArray<PartName> parts) in additions.BeforeSeams().Concat(EdgingSteps.Of(cushion, pattern, pieces, unit))
        )
        {
            Say(text, [.. parts]);
        }

        runs = [.. runs.Where(run => !JoinsFace(run))];
        int loop = Array.FindLastIndex(runs, run => run[0].Kind == SeamKind.StripJoin);
        for (var i = 0; i < runs.Length; i++)
        {
            steps.Add(Sew(runs[i], closesLoop: i == loop, last: i == runs.Length - 1));
        }

        string opening =
            cushion.Flange is { Layers: FlangeLayers.Double } ? "Turn the corners right side out and press the flanges back"
            : cushion.Closure is HandSewnClosure ? "Clip the corners, turn the cover right side out through the gap and press it"
            : "Open the closure, clip the corners, turn the cover right side out and press it";
        Say($"{opening}.");
        foreach ((string text, PartName part) in PanelSteps.After(cushion, pattern, unit))
        {
            Say(text, part);
        }

        string close = cushion.Closure is HandSewnClosure ? " and close the gap by hand with a ladder stitch" : "";
        string fill = cushion.Fabrics.InnerCover is not null ? "Put the filled inner cover in" : "Fill the cover";
        Say(cushion.Fill is null ? $"Check the finished size{close}." : $"{fill}{close}, and check the finished size.");
        foreach ((string text, ImmutableArray<PartName> parts) in additions.AfterFilling())
        {
            Say(text, [.. parts]);
        }
    }

    private void Hem()
    {
        foreach (Panel panel in pattern.Panels.Where(panel => !panel.IsAddition))
        {
            foreach (Edge edge in panel.Edges)
            {
                if (edge.Finish.Kind == FinishKind.Hem)
                {
                    Say(
                        $"Fold the {edge.Name} edge of {panel.Part} {edge.Finish.Turns} times by {Text(edge.Finish.Depth)} and stitch the hem.",
                        panel.Part
                    );
                }
            }
        }

        if (cushion.Closure is HookAndLoopClosure hook)
        {
            ImmutableArray<PartName> hemmed =
            [
                .. pattern
                    .Panels.Where(panel => !panel.IsAddition && panel.Edges.Any(edge => edge.Finish.Kind == FinishKind.Hem))
                    .Select(panel => panel.Part),
            ];
            Say(
                $"Sew the hook tape to one hem and the loop tape to the other, lay them over each other by {Text(hook.Overlap)}, and baste the ends together.",
                [.. hemmed]
            );
        }
        else if (cushion.Closure is OverlappingClosure overlapping)
        {
            ImmutableArray<PartName> hemmed =
            [
                .. pattern
                    .Panels.Where(panel => !panel.IsAddition && panel.Edges.Any(edge => edge.Finish.Kind == FinishKind.Hem))
                    .Select(panel => panel.Part),
            ];
            Fasten(hemmed);
            Say(
                $"Lay the hemmed {(overlapping.Side == Side.Bottom ? "flaps" : hemmed.Length == 1 ? "edges" : "strips")} over each other by {Text(overlapping.Overlap)} and baste their ends together.",
                [.. hemmed]
            );
        }
    }

    private void Fasten(ImmutableArray<PartName> hemmed)
    {
        if (cushion.Closure is ButtonClosure buttons)
        {
            Say(
                $"Work {Fastenings.Buttons(pattern)} buttonholes of {Text(buttons.Buttonhole)} at the marks of one hem and sew the buttons to the other.",
                [.. hemmed]
            );
        }
        else if (cushion.Closure is TieClosure)
        {
            Say(
                "Fold the long edges of each tie to the middle, turn its ends in, fold it in half and edge-stitch it; sew a tie to each hem at every mark.",
                [new PartName(PartKind.ClosureTie), .. hemmed]
            );
        }
    }

    private void SewHandle()
    {
        if (cushion.Handle is not { } handle)
        {
            return;
        }

        Panel marked = pattern.Panels.First(panel => panel.Marks.Any(mark => mark.Kind == MarkKind.HandleEnd));
        if (!handle.HasStrap)
        {
            Say(
                $"Turn {Text(HandleSpecification.EndFold)} of the webbing under at each end and sew the ends to {marked.Part} at its marks, {Text(handle.Span)} apart, with a boxed X.",
                marked.Part
            );
            return;
        }

        string inside = handle.HasWebbing ? "lay the webbing inside, " : "";
        Say(
            $"Fold the ends of the handle in by {Text(HandleSpecification.EndFold)} and its long edges to the middle, {inside}fold it in half, and edge-stitch it {Text(edgeDistance)} from the edge.",
            new PartName(PartKind.Handle)
        );
        Say(
            $"Sew each end of the handle to {marked.Part} at its marks, {Text(handle.Span)} apart, with a boxed X.",
            new PartName(PartKind.Handle),
            marked.Part
        );
    }

    // Seams that follow each other between the same kind of neighbours are sewn in one go.
    private IEnumerable<ImmutableArray<Seam>> Runs()
    {
        var run = ImmutableArray.CreateBuilder<Seam>();
        foreach (Seam seam in pattern.Seams.Where(seam => !pattern[seam.Other[0].Part].IsAddition))
        {
            if (run.Count > 0 && (Task(run[0]) != Task(seam)))
            {
                yield return run.ToImmutable();
                run.Clear();
            }

            run.Add(seam);
        }

        if (run.Count > 0)
        {
            yield return run.ToImmutable();
        }
    }

    private (bool Join, bool Zipper, PartName Face) Task(Seam seam) =>
        seam.Kind switch
        {
            SeamKind.StripJoin => (true, false, FaceOf(seam)),
            SeamKind.Zipper when InSection(seam) => (false, true, default),
            _ => (false, false, Neighbour(seam.Other[0].Part)),
        };

    // A zipper with edges turned under for it, not one in a seam.
    private bool InSection(Seam seam) =>
        seam.Kind == SeamKind.Zipper && pattern[seam.One[0].Part][seam.One[0].Edge].Finish.Kind == FinishKind.ZipperTurnUnder;

    // A notch that is opened and sewn across: the same panels on both sides.
    private static bool IsNotch(Seam seam) =>
        seam.One.Length > 1 && seam.One.Select(edge => edge.Part).SequenceEqual(seam.Other.Select(edge => edge.Part));

    // A face is whole before anything is basted to it.
    private static bool JoinsFace(ImmutableArray<Seam> run) => run[0].Kind == SeamKind.StripJoin && FaceOf(run[0]) != default;

    private static PartName FaceOf(Seam seam) => seam.Other[0].Part is { IsFace: true } face ? new PartName(face.Kind) : default;

    // Panels on one side of the cushion are one neighbour, and so are both strips of a closure, all gores, and all of an inner cover.
    private static PartName Neighbour(PartName part) =>
        part switch
        {
            { IsInner: true } => new PartName(PartKind.None) { IsInner = true },
            { Kind: PartKind.Side or PartKind.End } => PartName.Side(new EdgeName(part.Run.First)),
            { Kind: PartKind.ZipperLower } => new PartName(PartKind.ZipperUpper),
            { Kind: PartKind.ClosureLower } => new PartName(PartKind.ClosureUpper),
            _ => new PartName(part.Kind),
        };

    private Step Sew(ImmutableArray<Seam> run, bool closesLoop, bool last)
    {
        ImmutableArray<PartName> parts = [.. run.SelectMany(seam => seam.One.Concat(seam.Other)).Select(edge => edge.Part).Distinct()];
        Length length = run.Aggregate(Length.Zero, (sum, seam) => sum + pattern.LengthOf(seam));
        string allowance = Text(cushion.SeamAllowance);
        string text = run[0].Kind switch
        {
            SeamKind.StripJoin =>
                $"Join {List(parts)} end to end, {Joins(run.Length)} with {allowance} seams{(closesLoop ? ", and measure the loop against the face" : "")}.",
            SeamKind.Zipper when InSection(run[0]) =>
                $"Turn the edges under and sew the zipper between {(parts.Length == 1 ? $"the edges of {parts[0]}" : List(parts))}, {Text(length)} along each tape.",
            _ when IsNotch(run[0]) =>
                $"Open the notched corners of {List(parts)}, match their side seams, and sew across each, {Text(length)} in all with {allowance} seams.",
            _ when parts.Length == 1 =>
                $"Sew the edges of {parts[0]} to each other, {Text(length)} in all with {allowance} seams{Opening(run, last)}.",
            _ => $"Sew {List(parts)} together, matching notches, {Text(length)} in all with {allowance} seams{Opening(run, last)}.",
        };
        return Of(text, [.. parts]);
    }

    private string Opening(ImmutableArray<Seam> run, bool last) =>
        run.Any(seam => seam.Kind == SeamKind.Gap)
            ? $"; leave a gap in the {cushion.Closure.Side.ToString().ToLowerInvariant()} seam, 2 in short of each corner"
        : run.Any(seam => seam.Kind == SeamKind.Zipper)
            ? $"; set the zipper in the middle of the {cushion.Closure.Side.ToString().ToLowerInvariant()} seam"
        : last && cushion.Closure is ZipperClosure or OverlappingClosure and not EnvelopeClosure ? "; open the closure before the last seam"
        : "";

    private static string Joins(int count) => count == 1 ? "1 join" : $"{count} joins";

    private void Say(string text, params ReadOnlySpan<PartName> parts) => steps.Add(Of(text, parts));

    private Step Of(string text, ReadOnlySpan<PartName> parts)
    {
        var ids = ImmutableArray.CreateBuilder<string>();
        foreach (PartName part in parts)
        {
            // A part that is joined from several, or divided for a closure, is named by all of them.
            bool isWhole = pieces.Any(piece => piece.Part == part);
            ids.AddRange(pieces.Where(piece => piece.Part == part || (!isWhole && piece.Part.IsOf(part))).Select(piece => piece.Id));
        }

        return new Step($"{cushion.Id}: {text}", ids.ToImmutable());
    }

    private static string List(ImmutableArray<PartName> parts) =>
        parts.Length == 1 ? parts[0].ToString() : $"{string.Join(", ", parts[..^1])} and {parts[^1]}";

    private string Text(Length length) => LengthText.Format(length, unit);
}
