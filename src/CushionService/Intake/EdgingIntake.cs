using System.Collections.Immutable;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Additions;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Intake;

/// <summary>Checks an edging against the seams that it is sewn into, and specifies it.</summary>
internal static class EdgingIntake
{
    private static readonly LengthField<Edging> Depth = RecordForm<Edging>.Length(nameof(Edging.Depth)),
        CordDiameter = RecordForm<Edging>.Length(nameof(Edging.CordDiameter));

    /// <summary>The edging; null where it is plain, or was refused.</summary>
    public static EdgingSpecification? Read(Edging edging, CushionBody body, Findings findings)
    {
        Fields<Edging> fields = RecordForm<Edging>.Read(edging, findings);
        if (edging.Kind is not { } kind || !Enum.IsDefined(kind))
        {
            return null;
        }

        FieldsApply(edging, kind, findings);
        if (kind == EdgingKind.Plain)
        {
            return null;
        }

        if (body.Offer.EdgingOf(kind) is not { } offer)
        {
            string construction = Words<Construction>.Of(body.Offer.Kind);
            string detail = $"Construction {construction} cannot have edging {Words<EdgingKind>.Of(kind)}.";
            findings.Refuse(nameof(edging.Kind), "not-combinable", detail);
            return null;
        }

        SeamsAllow(edging, kind, offer, body, findings);
        if (body.Written.CornerTaper is not null)
        {
            string detail = "The corners of a cushion with an edging are not drawn in: the edging would not lie flat.";
            body.At.Warn(nameof(Cushion.CornerTaper), "tapered-edging", detail);
        }

        ImmutableArray<EdgingPlace> places = Places(edging, offer, body);
        return (kind, fields[Depth]) switch
        {
            (EdgingKind.Welt, _) => fields.Or(CordDiameter, body.Practice.Trims.CordDiameter) is { } cord
                ? Welt(edging, places, cord, body, findings)
                : null,
            (EdgingKind.Ruffle, { } depth) => fields.IsSound
                ? new RuffleSpecification(
                    places,
                    Shares.Of(edging.Fullness) ?? body.Practice.Trims.RuffleFullness,
                    depth,
                    edging.Lining ?? RuffleLining.Folded
                )
                : null,
            (EdgingKind.Flange, { } depth) => Flange(places, depth, body, findings),
            _ => null,
        };
    }

    private static void FieldsApply(Edging edging, EdgingKind kind, Findings findings)
    {
        bool welt = kind == EdgingKind.Welt,
            ruffle = kind == EdgingKind.Ruffle,
            flange = kind == EdgingKind.Flange;
        Only(welt, edging.CordDiameter is not null, nameof(edging.CordDiameter));
        Only(welt, edging.Cut is not null, nameof(edging.Cut));
        Only(welt || ruffle || flange, edging.At is not null, nameof(edging.At));
        Only(welt || ruffle || flange, edging.Fabric is not null, nameof(edging.Fabric));
        Only(ruffle, edging.Fullness is not null, nameof(edging.Fullness));
        Only(ruffle || flange, edging.Depth is not null, nameof(edging.Depth));
        Only(ruffle, edging.Lining is not null, nameof(edging.Lining));
        if ((ruffle || flange) && edging.Depth is null)
        {
            findings.Refuse(nameof(edging.Depth), "required", $"Depth is required for edging {Words<EdgingKind>.Of(kind)}.");
        }

        if (edging.At is { } at && at.Distinct().Count() < at.Count)
        {
            findings.Refuse(nameof(edging.At), "duplicate", "List each seam only once.");
        }

        void Only(bool applies, bool given, string field)
        {
            if (given && !applies)
            {
                findings.NotApplicable(field, $"edging {Words<EdgingKind>.Of(kind)}");
            }
        }
    }

    private static void SeamsAllow(Edging edging, EdgingKind kind, EdgingOffer offer, CushionBody body, Findings findings)
    {
        foreach ((int i, EdgingPlace place) in (edging.At ?? []).Index())
        {
            if (!offer.Places.Contains(place))
            {
                string places = string.Join(", ", offer.Places.Select(Words<EdgingPlace>.Of)),
                    construction = Words<Construction>.Of(body.Offer.Kind);
                string detail = $"Edging {Words<EdgingKind>.Of(kind)} on construction {construction} must be at one of {places}.";
                findings.Refuse($"{nameof(edging.At)}[{i}]", "not-combinable", detail);
            }
            else if (place == EdgingPlace.Corners && body is { Joins: BoxingJoins.Back, HasJoins: true })
            {
                const string Detail = "An edging at the corners needs a boxing that joins at the corners.";
                findings.Refuse($"{nameof(edging.At)}[{i}]", "not-combinable", Detail);
            }
        }

        if (body.HasOpenEnds)
        {
            findings.Refuse(nameof(edging.Kind), "not-combinable", "Gathered or tied ends have no seam for an edging. Choose flat ends.");
        }

        if (body.IsSharp && edging.At is { } at && at.Contains(EdgingPlace.Top) && at.Contains(EdgingPlace.Bottom))
        {
            const string Detail = "The top and the bottom of this wedge meet in one seam at the front. Put the edging at one of them.";
            findings.Refuse(nameof(edging.At), "not-combinable", Detail);
        }
    }

    // The seams that it names, or the usual ones; a wedge that ends in an edge has one there, not two.
    private static ImmutableArray<EdgingPlace> Places(Edging edging, EdgingOffer offer, CushionBody body) =>
        edging.At is { } at ? [.. at]
        : body.IsSharp ? [.. offer.Usual.Take(1)]
        : offer.Usual;

    private static FlangeStripSpecification Flange(ImmutableArray<EdgingPlace> places, Length depth, CushionBody body, Findings findings)
    {
        if (body.Outline is { HasCorners: false } curved)
        {
            string detail = $"A flat flange cannot follow the curves of outline {Words<OutlineKind>.Of(curved.Kind)}.";
            findings.Refuse(nameof(Edging.Kind), "not-combinable", detail);
        }
        else if (body.Outline is { } outline && !FlangeStrip.Fits(outline, depth))
        {
            string detail = $"A flange of {findings.Text(depth)} is too deep for the inside corners of this outline.";
            findings.Refuse(Depth.Name, "out-of-range", detail);
        }

        return new FlangeStripSpecification(places, depth);
    }

    private static WeltSpecification Welt(
        Edging edging,
        ImmutableArray<EdgingPlace> places,
        Length cord,
        CushionBody body,
        Findings findings
    )
    {
        if (edging.Cut is WeltCut.Crosswise or WeltCut.Lengthwise && body.Outline is { HasCorners: false })
        {
            findings.Warn(nameof(edging.Cut), "straight-welt-on-curve", "A straight-cut welt puckers on a curve. Cut it on the bias.");
        }

        // The cords of both seams stand half a diameter each into the boxing's height.
        if (
            body.Thickness is { } thickness
            && places.Count(place => place != EdgingPlace.Corners) * cord > Length.FromNanometres(thickness.Nanometres / 2)
        )
        {
            string detail = $"Cord of {findings.Text(cord)} covers more than half of a boxing of {findings.Text(thickness)}.";
            findings.Warn(CordDiameter.Name, "cord-thick-for-boxing", detail);
        }

        if (body.SeamAllowance is { } seam && cord > 2 * seam)
        {
            string detail = $"Cord of {findings.Text(cord)} is hard to sew close to with a seam allowance of {findings.Text(seam)}.";
            findings.Warn(CordDiameter.Name, "cord-thick-for-seam", detail);
        }

        return new WeltSpecification(places, cord, edging.Cut ?? WeltCut.Bias) { IsCutUsual = edging.Cut is null };
    }
}
