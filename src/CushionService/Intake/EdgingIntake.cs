using System.Collections.Immutable;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Additions;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Intake;

/// <summary>Checks an edging against the seams that it is sewn into, and specifies it.</summary>
/// <remarks>An edging is sewn between two panels. Its depth is finished, from the seam to its outer edge; a cord's diameter is without its
/// cover.</remarks>
internal static class EdgingIntake
{
    private static readonly LengthField<Edging> Depth = RecordForm<Edging>.Length(nameof(Edging.Depth));

    /// <summary>The edging; null where it is plain, or was refused.</summary>
    /// <param name="edging">The edging as written.</param>
    /// <param name="body">The cushion.</param>
    /// <param name="findings">Takes what is wrong with the edging.</param>
    public static EdgingSpecification? Read(Edging edging, CushionBody body, Findings findings)
    {
        Fields<Edging> fields = RecordForm<Edging>.Read(edging, findings);
        if (edging.Kind is not { } kind || !Enum.IsDefined(kind))
        {
            return null;
        }

        EdgingFields.Check(edging, kind, findings);
        if (kind == EdgingKind.Plain)
        {
            return null;
        }

        // Without a seam round its faces a construction has nowhere to put an edging.
        if (body.Offer.EdgingOf(kind) is not { } offer)
        {
            IEnumerable<EdgingKind> offered = body.Offer.Edgings.Select(one => one.Kind);
            findings.Refuse(nameof(edging.Kind), "not-combinable", TrimTexts.EdgingNotOffered(body.Offer.Kind, kind, offered));
            return null;
        }

        SeamsAllow(edging, kind, offer, body, findings);
        // Corners with an edging are usually left square; a French seam and topstitching have nothing to lie flat.
        if (body.Written.CornerTaper is not null && kind is not (EdgingKind.FrenchSeam or EdgingKind.Topstitched))
        {
            body.At.Warn(nameof(Cushion.CornerTaper), "tapered-edging", TrimTexts.TaperedEdging);
        }

        ImmutableArray<EdgingPlace> places = Places(edging, offer, body);
        return DepthAllows(kind, fields[Depth], body.Practice.Trims, findings) ? Of(kind, edging, fields, places, body, findings) : null;
    }

    /// <summary>Whether an edging lies between the two panels of its seam.</summary>
    /// <param name="edging">The edging as written; null for none.</param>
    public static bool IsSewnIn(Edging? edging) =>
        edging?.Kind switch
        {
            EdgingKind.Welt or EdgingKind.FlatPiping or EdgingKind.Ruffle or EdgingKind.Flange or EdgingKind.LipCord => true,
            EdgingKind.Fringe => edging.Attached != TrimAttachment.SewnOn,
            _ => false,
        };

    // What is sewn into the seams, by the kind's own sizes; null also where a size that the kind needs was refused.
    private static EdgingSpecification? Of(
        EdgingKind kind,
        Edging edging,
        Fields<Edging> fields,
        ImmutableArray<EdgingPlace> places,
        CushionBody body,
        Findings findings
    ) =>
        (kind, fields[Depth]) switch
        {
            (EdgingKind.Welt, _) => WeltIntake.Read(edging, fields, places, body, findings),
            // A ruffle is gathered from a longer strip: a fullness of 2 is twice the seam's length.
            (EdgingKind.Ruffle, { } depth) => fields.IsSound
                ? new RuffleSpecification(
                    places,
                    Shares.Of(edging.Fullness) ?? body.Practice.Trims.RuffleFullness,
                    depth,
                    edging.Lining ?? RuffleLining.Folded
                )
                : null,
            (EdgingKind.Flange, { } depth) => Flange(places, depth, body, findings),
            (EdgingKind.FlatPiping, _) => WeltIntake.ReadFlat(
                edging,
                fields.Or(Depth, body.Practice.Trims.PipingDepth),
                places,
                body,
                findings
            ),
            (EdgingKind.LipCord or EdgingKind.Fringe or EdgingKind.Gimp, _) => BoughtTrimIntake.Read(
                edging,
                fields,
                kind,
                places,
                body,
                findings
            ),
            (EdgingKind.Topstitched, _) => StitchedEdgeIntake.ReadTopstitch(edging, fields, places, body, findings),
            (EdgingKind.FrenchSeam, _) => StitchedEdgeIntake.ReadFrench(places, body, findings),
            _ => null,
        };

    // What hangs or lies flat beside a seam is deep; what shows as a line is narrow.
    private static bool DepthAllows(EdgingKind kind, Length? depth, TrimPractice practice, Findings findings)
    {
        switch (kind)
        {
            case EdgingKind.Ruffle or EdgingKind.Flange or EdgingKind.Fringe when depth < practice.LeastDepth:
                Length least = practice.LeastDepth;
                findings.RefuseRange(Depth.Name, "out-of-range", TrimTexts.EdgingDepthLeast(kind, least), least, null);
                return false;
            case EdgingKind.FlatPiping or EdgingKind.Gimp when depth > practice.WidestFlatTrim:
                Length most = practice.WidestFlatTrim;
                findings.RefuseRange(Depth.Name, "out-of-range", TrimTexts.EdgingDepthMost(kind, most), null, most);
                return false;
            default:
                return true;
        }
    }

    // Whether the seams that the order names are there, and can take the edging.
    private static void SeamsAllow(Edging edging, EdgingKind kind, EdgingOffer offer, CushionBody body, Findings findings)
    {
        foreach ((int i, EdgingPlace place) in (edging.At ?? []).Index())
        {
            if (!offer.Places.Contains(place))
            {
                findings.Refuse($"{nameof(edging.At)}[{i}]", "not-combinable", TrimTexts.EdgingPlace(kind, body.Offer.Kind, offer.Places));
            }
            // A wrapped boxing has no seams at the corners.
            else if (place == EdgingPlace.Corners && body is { Joins: BoxingJoins.Back, HasJoins: true })
            {
                findings.Refuse($"{nameof(edging.At)}[{i}]", "not-combinable", TrimTexts.EdgingAtCorners);
            }
        }

        // A gathered end is drawn up and a tied one is closed with a cord.
        if (body.HasOpenEnds)
        {
            findings.Refuse(nameof(edging.Kind), "not-combinable", TrimTexts.EdgingOnOpenEnds);
        }

        if (body.IsSharp && edging.At is { } at && at.Contains(EdgingPlace.Top) && at.Contains(EdgingPlace.Bottom))
        {
            findings.Refuse(nameof(edging.At), "not-combinable", TrimTexts.EdgingOnWedge);
        }
    }

    // The seams that it names, or the usual ones; a wedge that ends in an edge has one there, not two.
    private static ImmutableArray<EdgingPlace> Places(Edging edging, EdgingOffer offer, CushionBody body) =>
        edging.At is { } at ? [.. at]
        : body.IsSharp ? [.. offer.Usual.Take(1)]
        : offer.Usual;

    // A flat strip with mitred corners: it cannot lie flat round a curve, and at an inside corner two strips of it meet.
    private static FlangeStripSpecification Flange(ImmutableArray<EdgingPlace> places, Length depth, CushionBody body, Findings findings)
    {
        if (body.Outline is { HasCorners: false } curved)
        {
            findings.Refuse(nameof(Edging.Kind), "not-combinable", TrimTexts.FlangeOnCurves(curved.Kind));
        }
        else if (body.Outline is { } outline && !FlangeStrip.Fits(outline, depth))
        {
            findings.Refuse(Depth.Name, "out-of-range", TrimTexts.FlangeTooDeep(depth));
        }

        return new FlangeStripSpecification(places, depth);
    }
}
