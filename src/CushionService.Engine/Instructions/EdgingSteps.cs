using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns;
using CushionService.Engine.Specifications;

namespace CushionService.Engine.Instructions;

/// <summary>The steps of making an edging and basting it to the faces, before the seams that catch it are sewn.</summary>
internal static class EdgingSteps
{
    /// <summary>The steps, each with the parts that it handles.</summary>
    /// <param name="cushion">The cushion.</param>
    /// <param name="pattern">Its pattern.</param>
    /// <param name="pieces">The pieces of the cushion.</param>
    /// <param name="unit">The unit of lengths in words.</param>
    public static IEnumerable<(string Text, ImmutableArray<string> Parts)> Of(
        CushionSpecification cushion, Pattern pattern, IReadOnlyList<CutPiece> pieces, LengthUnit unit) => cushion.Trim.Edging switch
        {
            WeltSpecification welt => Welt(welt, cushion, pattern, pieces.First(piece => piece.Part == "welt"), unit),
            RuffleSpecification ruffle => Ruffle(ruffle, pattern, unit),
            _ => [],
        };

    private static IEnumerable<(string Text, ImmutableArray<string> Parts)> Welt(
        WeltSpecification welt, CushionSpecification cushion, Pattern pattern, CutPiece piece, LengthUnit unit)
    {
        string Text(Length length) => LengthText.Format(length, unit);
        WeltSupply supply = piece.Welt!;
        string join = Text(WeltSpecification.JoinAllowance);
        string covers = cushion.Quantity == 1 ? "" : $" It serves all {cushion.Quantity} covers.";
        ImmutableArray<string> made = ["welt"];
        yield return (supply.Kind switch
        {
            WeltSupplyKind.StraightStrips => $"Join the welt strips on the slant with {join} seams and press the joins open.{covers}",
            WeltSupplyKind.BiasStrips => $"Cut the bias strips apart, join them along the thread with {join} seams and press the joins open.{covers}",
            _ => $"Cut the welt square on its diagonal, join the two triangles along their straight edges with a {join} seam, rule lines {Text(supply.Strip)} apart along the bias, join the ends one line off, and cut round into one strip.{covers}",
        }, made);
        yield return ($"Wrap the strip round the {Text(welt.CordDiameter)} cord, wrong side in, and stitch close to the cord without crowding it.", made);
        foreach (EdgingLoop loop in welt.At.Select(place => EdgingLoop.Of(pattern, place)))
        {
            ImmutableArray<string> faces = [.. Faces(pattern, loop.Place)];
            yield return (
                $"Baste the welt to the right side of the {loop.Place.ToString().ToLowerInvariant()}, raw edges together, {Text(loop.Length)} round; clip its allowance at corners and curves, begin away from a corner, and lay the ends over each other by {Text(WeltSpecification.ClosingOverlap)}.",
                ["welt", .. faces]);
        }
    }

    private static IEnumerable<(string Text, ImmutableArray<string> Parts)> Ruffle(RuffleSpecification ruffle, Pattern pattern, LengthUnit unit)
    {
        string Text(Length length) => LengthText.Format(length, unit);
        foreach (EdgingLoop loop in ruffle.At.Select(place => EdgingLoop.Of(pattern, place)))
        {
            Seam gathering = pattern.Seams.First(seam => seam.Kind == SeamKind.Gathered && seam.One.SequenceEqual(loop.Edges));
            ImmutableArray<string> strips = [.. gathering.Other.Select(edge => edge.Part)], faces = [.. Faces(pattern, loop.Place)];
            string finish = ruffle.Lining == RuffleLining.Folded
                ? "fold it lengthwise, right side out" : $"hem its outer edge twice by {Text(RuffleSpecification.HemFold)}";
            yield return ($"Join {(strips.Length == 1 ? "the ruffle" : $"the {strips.Length} strips of the ruffle")} into a loop, {finish}, and run two gathering rows inside the allowance.", strips);
            yield return (
                $"Quarter the ruffle and the seam line of the {loop.Place.ToString().ToLowerInvariant()}, draw {Text(gathering.OtherFor(loop.Length))} up to {Text(loop.Length)}, a little fuller at the corners, and baste it to the right side, raw edges together.",
                [.. strips, .. faces]);
        }
    }

    private static IEnumerable<string> Faces(Pattern pattern, EdgingPlace place)
    {
        string face = place == EdgingPlace.Top ? "top" : "bottom";
        return pattern.Panels.Select(panel => panel.Part).Where(part => part == face || part.StartsWith($"{face}-", StringComparison.Ordinal));
    }
}
