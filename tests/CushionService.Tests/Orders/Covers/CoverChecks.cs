using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using CushionService.Engine.Cutting;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Stocks;
using CushionService.Nesting;

namespace CushionService.Tests.Orders.Covers;

/// <summary>What a master would not let pass, whatever the cover: each check states a rule by what is cut, bought and said, and asks no
/// code of the service for its opinion (common practice, no source).</summary>
internal static partial class CoverChecks
{
    /// <summary>The faults of a quote; none of a good one.</summary>
    public static IEnumerable<string> Faults(QuotedCover cover) =>
        [.. Grain(cover), .. Steps(cover), .. Fronts(cover), .. Sentences(cover), .. Sizes(cover), .. Sums(cover), .. Yards(cover)];

    // All that is seen of a cushion in one fabric runs one way, and so do the cushions of a row.
    private static IEnumerable<string> Grain(QuotedCover cover)
    {
        OrderSpecification order = cover.Quote.Drafting.Order;
        LaidPiece[] seen =
        [
            .. cover
                .Quote.Yardages.SelectMany(yardage => yardage.Layout.Placements)
                .Where(laid =>
                    laid.Piece is { Cushion: not null, Panel: { Role: FabricRole.Top or FabricRole.Bottom or FabricRole.Sides } }
                ),
        ];
        string RowOf(string id) => order.Rows.FirstOrDefault(row => row.Cushions.Contains(id))?.Id ?? id;
        foreach (var run in seen.GroupBy(laid => (Row: RowOf(laid.Piece.Cushion!.Id), laid.Piece.Fabric)))
        {
            FabricSpecification fabric = order.Fabrics.First(one => one.Id == run.Key.Fabric);
            int[] ways = [.. run.Select(laid => laid.Turn % (fabric.OneWay ? 360 : 180)).Distinct()];
            if (ways.Length > 1)
            {
                yield return $"{run.Key} runs {string.Join(" and ", ways)} degrees";
            }
        }
    }

    // Every piece is handled by a step, every step handles what is cut, and what is bought is used by one.
    private static IEnumerable<string> Steps(QuotedCover cover)
    {
        string[] cut = [.. cover.Quote.Drafting.Pieces.Where(piece => piece.Cushion is not null).Select(piece => piece.Id)];
        string[] handled = [.. cover.Quote.Steps.Skip(cover.Quote.Yardages.Length).SelectMany(step => step.Pieces).Distinct()];
        foreach (string piece in cut.Except(handled))
        {
            yield return $"no step handles {piece}";
        }

        string[] said = [.. cover.Answer["steps"]!.AsArray().Select(step => step!["text"]!.GetValue<string>())];
        foreach (MaterialKind kind in cover.Quote.Materials.Select(material => material.Kind).Distinct())
        {
            if (
                Word(kind) is { } word
                && !said.Any(sentence => word.Split('|').Any(one => sentence.Contains(one, StringComparison.OrdinalIgnoreCase)))
            )
            {
                yield return $"{kind} is bought, and no step uses it";
            }
        }
    }

    private static string? Word(MaterialKind kind) =>
        kind switch
        {
            MaterialKind.Foam => "foam",
            MaterialKind.LooseFill => "fill the ",
            MaterialKind.Zipper => "zipper",
            MaterialKind.Slider => "zipper",
            MaterialKind.HookAndLoopTape => "hook tape",
            MaterialKind.Cord => "cord",
            MaterialKind.Webbing => "webbing",
            MaterialKind.Button => "button",
            MaterialKind.Twine => "twine",
            MaterialKind.AntiSlip => "anti-slip",
            MaterialKind.Eyelet => "eyelet",
            MaterialKind.Batting => "batting|wadding",
            MaterialKind.Adhesive => "glue",
            MaterialKind.Binding => "bind",
            MaterialKind.Form => "form",
            _ => null,
        };

    // A strip that is joined over a front is joined there in symmetric pairs: each part's finished lengths read the same both ways.
    private static IEnumerable<string> Fronts(QuotedCover cover)
    {
        foreach (Pattern pattern in cover.Quote.Drafting.Patterns)
        {
            foreach (
                IGrouping<PartName, Panel> strip in pattern
                    .Panels.Where(panel => panel.Part.Stretch > 0 && panel.Role == FabricRole.Sides)
                    .GroupBy(panel => panel.Part with { Stretch = 0 })
                    .Where(strip => strip.Key.Kind == PartKind.Side && strip.Key.ToString() == "front")
            )
            {
                Length[] parts = [.. strip.OrderBy(panel => panel.Part.Stretch).Select(panel => panel.Width)];
                if (parts.Zip(parts.Reverse()).Any(pair => Math.Abs((pair.First - pair.Second).Nanometres) > 1000))
                {
                    yield return $"the front is joined off-centre: {string.Join(" + ", parts.Select(part => part.In(LengthUnit.Inch)))} in";
                }
            }
        }
    }

    // Metric answers speak of no inch, others of no centimetre; no figure is longer than a tape shows; no template is left half filled.
    private static IEnumerable<string> Sentences(QuotedCover cover)
    {
        bool inches = cover.Quote.Drafting.Order.Unit == LengthUnit.Inch;
        foreach (string sentence in Texts(cover.Answer))
        {
            if ((inches ? Metric() : Imperial()).IsMatch(sentence))
            {
                yield return $"wrong units: {sentence}";
            }

            if (LongFigure().IsMatch(sentence) || HalfFilled().IsMatch(sentence))
            {
                yield return $"badly written: {sentence}";
            }
        }
    }

    private static IEnumerable<string> Texts(JsonNode? node) =>
        node switch
        {
            JsonObject record => record
                .Where(member => member.Key is not ("arguments" or "key" or "proofFigures" or "soldUnit" or "unit" or "item" or "id"))
                .SelectMany(member => Texts(member.Value)),
            JsonArray list => list.SelectMany(Texts),
            JsonValue value when value.TryGetValue(out string? text) => [text],
            _ => [],
        };

    // The finished size is the ordered one; a face is cut as large as it is finished, and more.
    private static IEnumerable<string> Sizes(QuotedCover cover)
    {
        foreach (CutPiece piece in cover.Quote.Drafting.Pieces)
        {
            if (piece.Panel is { } panel && (piece.Width < panel.Width || piece.Length < panel.Height))
            {
                yield return $"{piece.Id} is cut smaller than it is finished";
            }
        }

        foreach (CushionSpecification cushion in cover.Quote.Drafting.Order.Cushions)
        {
            JsonNode? finished = cover.Answer["cushions"]!.AsArray().First(one => one!["id"]!.GetValue<string>() == cushion.Id)![
                "finished"
            ];
            LengthUnit unit = cover.Quote.Drafting.Order.Unit;
            double width = (double)(cushion.Length > Length.Zero ? cushion.Length : cushion.Width).In(unit);
            if (Math.Abs(finished!["width"]!.GetValue<double>() - width) > 1e-6)
            {
                yield return $"{cushion.Id} is finished {finished["width"]} wide, and ordered {width}";
            }
        }
    }

    // Lines, labour and additions are the total, and so are the shares.
    private static IEnumerable<string> Sums(QuotedCover cover)
    {
        if (cover.Answer["cost"] is not JsonObject cost)
        {
            yield break;
        }

        decimal Sum(string list) => cost[list]!.AsArray().Sum(line => decimal.Parse(line!["amount"]!.GetValue<string>()));
        decimal total = decimal.Parse(cost["total"]!.GetValue<string>());
        if (Sum("lines") + Sum("labour") + Sum("additions") != total)
        {
            yield return $"the lines sum to {Sum("lines") + Sum("labour") + Sum("additions")}, the total is {total}";
        }

        if (Sum("shares") != total)
        {
            yield return $"the shares sum to {Sum("shares")}, the total is {total}";
        }
    }

    // What is sold is long enough after the wash, with a repeat to find the motif where it is unknown, and a whole number of steps.
    private static IEnumerable<string> Yards(QuotedCover cover)
    {
        foreach (Yardage yardage in cover.Quote.Yardages)
        {
            FabricLayout layout = yardage.Layout;
            FabricSpecification fabric = layout.Fabric;
            decimal kept = 1 - ((decimal)fabric.LengthShrinkage.Numerator / (decimal)fabric.LengthShrinkage.Denominator);
            decimal least =
                (layout.Length.Nanometres / kept)
                + (fabric.Repeat is { IsUnknownAlong: true } repeat && layout.MotifX is not null ? repeat.Length!.Value.Nanometres : 0)
                + fabric.Squaring.Nanometres;
            if (yardage.Sold.Nanometres + 2 < least)
            {
                yield return $"{yardage.Sold} of {fabric.Id} is sold, and {least} nm is needed";
            }

            foreach (LaidPiece laid in layout.Placements)
            {
                if (laid.X < Length.Zero || laid.X + laid.Width > fabric.UsableWidth || laid.Y + laid.Length > layout.Length)
                {
                    yield return $"{laid.Piece.Id} lies beyond the fabric";
                }

                if (laid.IsMatched && !OnPhase(laid, layout))
                {
                    yield return $"{laid.Piece.Id} is off its phase";
                }

                bool quarter = laid.Piece.Rotations == Rotations.QuarterTurns;
                if (!quarter && laid.Turn % 180 != (laid.Piece.IsRailroaded ? 90 : 0))
                {
                    yield return $"{laid.Piece.Id} is turned against its grain";
                }
            }
        }
    }

    // The matching point lies on a motif: one is where the layout says, and a repeat from there each way.
    private static bool OnPhase(LaidPiece laid, FabricLayout layout)
    {
        RepeatSpecification repeat = layout.Fabric.LaidRepeat!;
        Engine.Geometry.Point drawn = laid.Piece.Panel!.Match!.Value.Moved(laid.Piece.Origin.X, laid.Piece.Origin.Y);
        (Length x, Length y) =
            laid.Turn == 90 ? (laid.X + laid.Piece.Length - drawn.Y, laid.Y + drawn.X) : (laid.X + drawn.X, laid.Y + drawn.Y);
        long column = 0;
        double slack =
            1000.0 * (4 + layout.Placements.Length + (layout.Length.Nanometres / Math.Max(1, repeat.Length?.Nanometres ?? long.MaxValue)));
        if (repeat.Width is { } width)
        {
            double columns = (double)(x - layout.MotifX!.Value).Nanometres / width.Nanometres;
            column = (long)Math.Round(columns);
            if (Math.Abs(columns - column) * width.Nanometres > slack + (1000 * Math.Abs(column)))
            {
                return false;
            }
        }

        if (repeat.Length is not { } length)
        {
            return true;
        }

        double drop = repeat.Drop == DropKind.Half && column % 2 != 0 ? 0.5 : 0,
            rows = ((double)(y - layout.MotifStart).Nanometres / length.Nanometres) - drop;
        // Half a repeat may end between two micrometres, the kernel's unit, in each column anew.
        return Math.Abs(rows - Math.Round(rows)) * length.Nanometres <= slack + (1000.0 * Math.Abs(column));
    }

    [GeneratedRegex(@"\d in\b(?! all| each)|inch|\byd\b|\blb\b|ft³")]
    private static partial Regex Imperial();

    [GeneratedRegex(@"\d (cm|mm|m)\b")]
    private static partial Regex Metric();

    [GeneratedRegex(@"\.\d{4}")]
    private static partial Regex LongFigure();

    [GeneratedRegex(@"[{}]|  |\.\.| [.,;]|System\.|null")]
    private static partial Regex HalfFilled();
}
