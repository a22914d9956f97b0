using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Additions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Instructions;

/// <summary>The steps of making an edging and basting it to the faces, before the seams that catch it are sewn.</summary>
internal static class EdgingSteps
{
    /// <summary>The steps, each with the parts that it handles.</summary>
    /// <param name="cushion">The cushion.</param>
    /// <param name="pattern">Its pattern.</param>
    /// <param name="pieces">The pieces of the cushion.</param>
    /// <param name="unit">The unit of lengths in words.</param>
    public static IEnumerable<(string Text, ImmutableArray<PartName> Parts)> Of(
        CushionSpecification cushion,
        Pattern pattern,
        IReadOnlyList<CutPiece> pieces,
        LengthUnit unit
    ) =>
        cushion.Trim.Edging switch
        {
            WeltSpecification welt => Welt(welt, cushion, pattern, pieces.First(piece => piece.Part.Kind == PartKind.Welt), unit),
            RuffleSpecification ruffle => Ruffle(ruffle, pattern, unit),
            FlangeStripSpecification flange => Flange(flange, pattern, unit),
            _ => [],
        };

    private static IEnumerable<(string Text, ImmutableArray<PartName> Parts)> Welt(
        WeltSpecification welt,
        CushionSpecification cushion,
        Pattern pattern,
        CutPiece piece,
        LengthUnit unit
    )
    {
        string Text(Length length) => LengthText.Format(length, unit);
        WeltSupply supply = piece.Welt!;
        string join = Text(WeltSpecification.JoinAllowance);
        string covers = cushion.Quantity == 1 ? "" : $" It serves all {cushion.Quantity} covers.";
        ImmutableArray<PartName> made = [new(PartKind.Welt)];
        yield return (
            supply.Kind switch
            {
                WeltSupplyKind.StraightStrips => $"Join the welt strips on the slant with {join} seams and press the joins open.{covers}",
                WeltSupplyKind.BiasStrips =>
                    $"Cut the bias strips apart, join them along the thread with {join} seams and press the joins open.{covers}",
                _ =>
                    $"Cut the welt square on its diagonal, join the two triangles along their straight edges with a {join} seam, rule lines {Text(supply.Strip)} apart along the bias, join the ends one line off, and cut round into one strip.{covers}",
            },
            made
        );
        yield return (
            $"Wrap the strip round the {Text(welt.CordDiameter)} cord, wrong side in, and stitch close to the cord without crowding it.",
            made
        );
        foreach (EdgingLoop loop in welt.At.Select(place => EdgingLoop.Of(pattern, place)))
        {
            string where = Where(loop.Place);
            yield return (
                loop.Place == EdgingPlace.Corners
                    ? $"Baste a length of welt to the right side of one panel at each corner of the boxing, raw edges together, {Text(loop.Length)} in all, its ends running into the seams above and below."
                : !loop.IsClosed
                    ? $"Baste a length of welt to the right side of each side of {where}, raw edges together, {Text(loop.Length)} in all, its ends running into the corners."
                : $"Baste the welt to the right side of {where}, raw edges together, {Text(loop.Length)} round; clip its allowance at corners and curves, begin away from a corner, and lay the ends over each other by {Text(WeltSpecification.ClosingOverlap)}.",
                [new(PartKind.Welt), .. Faces(pattern, loop)]
            );
        }
    }

    private static IEnumerable<(string Text, ImmutableArray<PartName> Parts)> Flange(
        FlangeStripSpecification flange,
        Pattern pattern,
        LengthUnit unit
    )
    {
        ImmutableArray<PartName> strips = [.. pattern.Panels.Select(panel => panel.Part).Where(part => part.Kind == PartKind.Flange)];
        foreach (EdgingLoop loop in flange.At.Select(place => EdgingLoop.Of(pattern, place)))
        {
            yield return (
                "Sew the flange strips to each other at their slanted ends, point to point, turn the mitres and fold the flange lengthwise, right side out.",
                strips
            );
            yield return (
                $"Baste the flange to the right side of {Where(loop.Place)}, raw edges together and mitres at the corners, {LengthText.Format(loop.Length, unit)} round.",
                [.. strips, .. Faces(pattern, loop)]
            );
        }
    }

    private static IEnumerable<(string Text, ImmutableArray<PartName> Parts)> Ruffle(
        RuffleSpecification ruffle,
        Pattern pattern,
        LengthUnit unit
    )
    {
        string Text(Length length) => LengthText.Format(length, unit);
        foreach (EdgingLoop loop in ruffle.At.Select(place => EdgingLoop.Of(pattern, place)))
        {
            Seam gathering = pattern.Seams.First(seam => seam.Kind == SeamKind.Gathered && seam.One.SequenceEqual(loop.Edges));
            ImmutableArray<PartName> strips = [.. gathering.Other.Select(edge => edge.Part)],
                faces = [.. Faces(pattern, loop)];
            string finish =
                ruffle.Lining == RuffleLining.Folded
                    ? "fold it lengthwise, right side out"
                    : $"hem its outer edge twice by {Text(RuffleSpecification.HemFold)}";
            yield return (
                $"Join {(strips.Length == 1 ? "the ruffle" : $"the {strips.Length} strips of the ruffle")} into a loop, {finish}, and run two gathering rows inside the allowance.",
                strips
            );
            yield return (
                $"Quarter the ruffle and the seam line of {Where(loop.Place)}, draw {Text(gathering.OtherFor(loop.Length))} up to {Text(loop.Length)}, a little fuller at the corners, and baste it to the right side, raw edges together.",
                [.. strips, .. faces]
            );
        }
    }

    private static string Where(EdgingPlace place) =>
        place is EdgingPlace.Left or EdgingPlace.Right
            ? $"the {place.ToString().ToLowerInvariant()} side"
            : $"the {place.ToString().ToLowerInvariant()}";

    private static IEnumerable<PartName> Faces(Pattern pattern, EdgingLoop loop) =>
        loop.Place == EdgingPlace.Corners
            ? loop.Edges.Select(edge => edge.Part).Distinct()
            : pattern.Panels.Select(panel => panel.Part).Where(part => EdgingLoop.Bears(pattern, new EdgeRef(part, default), loop.Place));
}
