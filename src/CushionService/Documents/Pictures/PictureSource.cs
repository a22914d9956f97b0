using System.Collections.Immutable;
using System.Globalization;
using CushionService.Engine.Cutting;
using CushionService.Engine.Layouts;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Quoting;
using CushionService.Engine.Scenes;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Nesting;

namespace CushionService.Documents.Pictures;

/// <summary>What a picture of a cushion is made of: its scene, its fabrics, and where their prints lie on its pieces.</summary>
internal sealed class PictureSource
{
    // Of a fabric whose colour the order does not say: unbleached, so that print and shade show on it.
    private const string Plain = "#efe9dd";
    private const int Hatches = 5;

    // Contrast as the Web Content Accessibility Guidelines 2.2 measure it, and from where on one sees the line between two areas.
    private const double Flare = 0.05;
    private const double Distinct = 1.5;
    private readonly Dictionary<PartName, PrintPhase> _prints = [];
    private readonly Dictionary<string, PictureFabric> _fabrics = [];

    // One for each turn, shared by all steps of a cushion, each of which is looked at several times.
    private readonly Dictionary<CameraTurn, VisiblePatch[]> _seen;

    private PictureSource(CushionScene scene, Dictionary<CameraTurn, VisiblePatch[]> seen) => (Scene, _seen) = (scene, seen);

    /// <summary>The cushion.</summary>
    public CushionScene Scene { get; }

    /// <summary>The cushion.</summary>
    public CushionSpecification Cushion => Scene.Cushion;

    /// <summary>The patches that face the viewer.</summary>
    /// <param name="camera">Looks at the scene.</param>
    public IReadOnlyList<VisiblePatch> Seen(Camera camera)
    {
        if (!_seen.TryGetValue(camera.Turn, out VisiblePatch[]? seen))
        {
            _seen[camera.Turn] = seen = [.. VisiblePatch.Of(Scene, camera)];
        }

        return seen;
    }

    /// <summary>How a fabric looks.</summary>
    /// <param name="fabric">The id of a fabric of the order.</param>
    public PictureFabric Fabric(string fabric) => _fabrics[fabric];

    /// <summary>How the fabric of a role looks.</summary>
    /// <param name="role">A role that the cushion has a fabric for.</param>
    public PictureFabric Fabric(FabricRole role) => _fabrics[Cushion.Fabrics[role]];

    /// <summary>The parts that a reader is to look at; null for all.</summary>
    public IReadOnlySet<PartName>? Shown { get; init; }

    /// <summary>Whether a reader is to look at a part.</summary>
    /// <param name="part">A part of the pattern.</param>
    public bool Shows(PartName part) => Shown?.Contains(part) != false;

    /// <summary>How the fabric of a panel looks: quiet where a reader is to look at others.</summary>
    /// <param name="panel">A panel of the pattern.</param>
    public PictureFabric Fabric(Panel panel) =>
        Shows(panel.Part) ? Fabric(panel.Role) : Fabric(panel.Role) with { Tint = Tint.Quiet, Hatch = 0 };

    /// <summary>The same with some parts to look at.</summary>
    /// <param name="shown">Prints are kept on these alone: a quiet panel has none.</param>
    public PictureSource With(IReadOnlySet<PartName> shown)
    {
        var source = new PictureSource(Scene, _seen) { Shown = shown };
        foreach ((string id, PictureFabric fabric) in _fabrics)
        {
            source._fabrics[id] = fabric;
        }

        foreach ((PartName part, PrintPhase phase) in _prints.Where(print => shown.Contains(print.Key)))
        {
            source._prints[part] = phase;
        }

        return source;
    }

    /// <summary>Where the motif lies on a part; null on fabric without a repeat, or where nothing is laid out.</summary>
    /// <param name="part">A part of the pattern, strips joined.</param>
    public PrintPhase? Print(PartName part) => _prints.GetValueOrDefault(part);

    /// <summary>The source of a cushion's picture.</summary>
    /// <param name="drafting">A drafting without violations.</param>
    /// <param name="cushion">The number of the cushion in it, from 0.</param>
    /// <param name="layouts">The layouts of its printed fabrics.</param>
    public static PictureSource Of(Drafting drafting, int cushion, ImmutableArray<FabricLayout> layouts)
    {
        OrderSpecification order = drafting.Order;
        CushionSpecification drawn = order.Cushions[cushion];
        var source = new PictureSource(CushionScene.Of(drawn, drafting.Patterns[cushion]), []);
        List<(double Grey, int Hatch)> before = [];
        for (int i = 0; i < order.Fabrics.Length; i++)
        {
            FabricSpecification fabric = order.Fabrics[i];
            string variable = string.Create(CultureInfo.InvariantCulture, $"--cushion-fabric-{i + 1}");
            var tint = new Tint(variable, fabric.Colour ?? Plain);
            int hatch = HatchOf(tint.Grey, before);
            before.Add((tint.Grey, hatch));
            source._fabrics[fabric.Id] = new PictureFabric(fabric.Name, tint, hatch);
        }

        foreach (FabricLayout layout in layouts)
        {
            foreach (LaidPiece laid in layout.Placements)
            {
                // All copies of a matched piece lie on the print the same way; where they do not, the first speaks for
                // all.
                if (laid.Copy == 1 && laid.Piece.Cushion?.Id == drawn.Id && PrintPhase.Of(laid, layout) is { } phase)
                {
                    source._prints[laid.Piece.Part] = phase;
                }
            }
        }

        return source;
    }

    // Fabrics whose greys are close on a black and white print differ by their hatches: the first that none of those before has.
    private static int HatchOf(double grey, List<(double Grey, int Hatch)> before)
    {
        bool[] used = new bool[Hatches];
        foreach ((double other, int hatch) in before)
        {
            used[hatch] |= (Math.Max(grey, other) + Flare) / (Math.Min(grey, other) + Flare) < Distinct;
        }

        return Array.IndexOf(used, false) is >= 0 and int free ? free : before.Count % Hatches;
    }

    /// <summary>The layouts that a picture needs: of the fabrics of its cushion that have a repeat.</summary>
    /// <param name="drafting">A drafting without violations.</param>
    /// <param name="cushion">The number of the cushion in it, from 0.</param>
    /// <param name="effort">How hard to search.</param>
    /// <param name="cancellation">Gives up the search.</param>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    public static ImmutableArray<FabricLayout> LayOut(Drafting drafting, int cushion, Effort effort, CancellationToken cancellation)
    {
        string id = drafting.Order.Cushions[cushion].Id;
        int used = drafting.Pieces.Select(piece => piece.Fabric).Distinct().Count();
        var layouts = ImmutableArray.CreateBuilder<FabricLayout>();
        foreach (FabricSpecification fabric in drafting.Order.Fabrics.Where(fabric => fabric.Repeat is not null))
        {
            ImmutableArray<CutPiece> pieces = [.. drafting.Pieces.Where(piece => piece.Fabric == fabric.Id)];
            if (pieces.Any(piece => piece.Cushion?.Id == id))
            {
                layouts.Add(FabricNesting.LayOut(fabric, pieces, effort, used, cancellation));
            }
        }

        return layouts.ToImmutable();
    }
}
