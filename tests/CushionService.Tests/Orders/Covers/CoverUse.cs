using CushionService.Engine.Cutting;
using CushionService.Engine.Geometry;
using CushionService.Engine.Instructions;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Panels;

namespace CushionService.Tests.Orders.Covers;

/// <summary>That all of a quote is used, once and in time: marks, materials, and the order in which a cover is closed (common practice, no
/// source).</summary>
internal static class CoverUse
{
    // What lies between the edging of a face and the next: whatever makes the face whole must come before.
    private static readonly string[] Edges = ["welt-corners", "welt-sides", "welt-round", "ruffle-baste", "flange-baste"];

    private static readonly string[] Wholes =
    [
        "join-run",
        "gores",
        "hem",
        "zipper-tails",
        "zipper-centred",
        "zipper-lapped",
        "hook-and-loop",
        "buttons",
        "closure-ties",
        "overlap",
        "channels",
        "taper",
        "pocket",
        "vents",
        "handle-ends",
        "stay-stitch",
        "stay-stitch-hollows",
    ];

    // All that can be done to a cover that is turned right side out.
    private static readonly string[] Turned =
    [
        "turn-",
        "body-line",
        "draw-ends",
        "tie-body",
        "cut-foam",
        "foam-",
        "round-foam",
        "glue-",
        "wrap",
        "insert-",
        "fill-loose",
        "close-gap",
        "close-closure",
        "check-",
        "button-covers",
        "tufts",
        "trim-on",
        "topstitch",
    ];

    /// <summary>The faults of a quote; none of a good one.</summary>
    public static IEnumerable<string> Faults(QuotedCover cover) => [.. Marks(cover), .. Materials(cover), .. Order(cover)];

    // A mark lies on its piece, is there once, and a step of the piece uses it.
    private static IEnumerable<string> Marks(QuotedCover cover)
    {
        foreach (CutPiece piece in cover.Quote.Drafting.Pieces)
        {
            IReadOnlyList<PieceMark> marks = PieceMarks.Of(piece);
            foreach (PieceMark mark in marks)
            {
                if (!IsOn(piece, mark.From) || (mark.To is { } to && !IsOn(piece, to)))
                {
                    yield return $"a {mark.Kind} lies beside {piece.Id}";
                }
            }

            foreach (var twice in marks.GroupBy(mark => (mark.Kind, mark.From, mark.To)).Where(same => same.Count() > 1))
            {
                yield return $"{twice.Key.Kind} is marked {twice.Count()} times at one place of {piece.Id}";
            }

            string[] said = [.. cover.Quote.Steps.Where(step => step.Pieces.Contains(piece.Id)).Select(step => step.Text.ToString())];
            foreach (MarkPurpose purpose in (piece.Panel?.Marks ?? []).Select(mark => mark.Purpose).Distinct())
            {
                if (
                    Word(purpose) is { } word
                    && !word.Split('|').Any(one => said.Any(text => text.Contains(one, StringComparison.OrdinalIgnoreCase)))
                )
                {
                    yield return $"{piece.Id} is marked to {purpose}, and no step of it speaks of {word}";
                }
            }
        }
    }

    private static bool IsOn(CutPiece piece, Point at) =>
        at.X >= Length.Zero && at.Y >= Length.Zero && at.X <= piece.Width && at.Y <= piece.Length;

    private static string? Word(MarkPurpose purpose) =>
        purpose switch
        {
            MarkPurpose.StitchBody => "body",
            MarkPurpose.Tuft => "tuft",
            MarkPurpose.CatchTies or MarkPurpose.SewClosureTie or MarkPurpose.TieBody => "tie",
            MarkPurpose.CatchStrap => "strap",
            MarkPurpose.SewPocket => "pocket",
            MarkPurpose.SewHandleEnd => "handle|webbing",
            MarkPurpose.StitchChannel => "channel",
            MarkPurpose.StopZipper or MarkPurpose.LapZipper => "zipper",
            MarkPurpose.Button => "button",
            MarkPurpose.TaperCorner => "taper",
            MarkPurpose.CutDiagonal => "diagonal",
            MarkPurpose.CutStripsApart => "strip",
            MarkPurpose.FoldInFour or MarkPurpose.FoldLengthwise => "fold",
            _ => null,
        };

    // Each cushion takes of a line once, and no line is for a cushion that is not of the order.
    private static IEnumerable<string> Materials(QuotedCover cover)
    {
        foreach (Material material in cover.Quote.Materials)
        {
            string[] takers = [.. material.Uses.Select(use => use.Cushion)];
            if (takers.Distinct().Count() < takers.Length)
            {
                yield return $"a cushion takes {material.Item} twice";
            }

            if (takers.Except(cover.Quote.Drafting.Order.Cushions.Select(cushion => cushion.Id)).Any())
            {
                yield return $"{material.Item} is bought for no cushion of the order";
            }
        }
    }

    // What is edged is whole, and what is turned out is sewn.
    private static IEnumerable<string> Order(QuotedCover cover)
    {
        foreach (var made in cover.Quote.Steps.Where(step => step.Cushion is not null).GroupBy(step => step.Cushion))
        {
            (string Key, Step Step)[] all = [.. made.Select(step => (Key(step), step))];
            // An inner cover is made, filled and checked before the outer one.
            int outer = all.Any(one => one.Key == "insert-inner")
                ? Array.FindIndex(all, one => one.Key.StartsWith("check-", StringComparison.Ordinal)) + 1
                : 0;
            foreach (string fault in outer > 0 ? [.. Cover(all[..outer]), .. Cover(all[outer..])] : Cover(all))
            {
                yield return $"{made.Key}: {fault}";
            }
        }
    }

    private static IEnumerable<string> Cover((string Key, Step Step)[] steps)
    {
        for (int i = 0; i < steps.Length; i++)
        {
            (string key, Step step) = steps[i];
            if (Edges.Contains(key))
            {
                foreach ((string later, Step whole) in steps[i..].Where(one => Wholes.Contains(one.Key)))
                {
                    string[] both = [.. whole.Pieces.Intersect(step.Pieces)];
                    if (both.Length > 0)
                    {
                        yield return $"{key} edges {string.Join(", ", both)} before {later}";
                    }
                }
            }
        }

        int turned = Array.FindIndex(steps, one => one.Key is "turn-out" or "turn-flanges");
        if (turned < 0)
        {
            yield return "it is never turned right side out";
        }

        foreach ((string key, _) in steps[Math.Max(turned, 0)..])
        {
            if (!Turned.Any(allowed => key.StartsWith(allowed, StringComparison.Ordinal)))
            {
                yield return $"{key} reaches into a cover that is turned and closed";
            }
        }
    }

    // Without the name of its cushion.
    private static string Key(Step step) =>
        (step.Text.Arguments.Select(argument => argument.Value).OfType<Message>().LastOrDefault() ?? step.Text).Key["step.".Length..];
}
