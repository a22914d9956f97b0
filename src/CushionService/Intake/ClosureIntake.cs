using System.Collections.Immutable;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Patterns.Sections;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using Outline = CushionService.Engine.Specifications.Outlines.Outline;

namespace CushionService.Intake;

/// <summary>Checks how a cushion opens, and specifies it: what its construction offers, which fields apply, and what its sizes
/// allow.</summary>
/// <remarks>A closure is at a side or across the underside. At a side it opens a seam, or a section of the boxing of its own; across the
/// underside it divides the bottom in two.</remarks>
internal static class ClosureIntake
{
    /// <summary>The closure; null where it is missing, or was refused.</summary>
    /// <param name="closure">The closure as written.</param>
    /// <param name="body">The cushion; its return is read here.</param>
    /// <param name="findings">Takes what is wrong with the closure.</param>
    public static ClosureSpecification? Read(Closure? closure, CushionBody body, Findings findings)
    {
        if (closure is null)
        {
            return null;
        }

        Fields<Closure> fields = RecordForm<Closure>.Read(closure, findings);
        if (closure.Kind is not { } kind || !Enum.IsDefined(kind) || !IsOffered(closure, kind, body.Offer, findings))
        {
            return null;
        }

        // A boxing that is wrapped round in one strip is open at the back alone.
        if (body is { HasJoins: true, Joins: BoxingJoins.Back, ClosureSide: not (Side.Back or Side.Bottom) })
        {
            findings.Refuse(nameof(closure.Side), "not-combinable", ClosureTexts.WrappedBoxing);
        }

        // Known by now: a side of its own is offered, or the construction's first is taken.
        Side side = body.ClosureSide!.Value;
        ClosureFields.Check(closure, kind, body, findings);
        body.Return = ReturnIntake.Read(fields, kind, body, findings);
        if (side == Side.Front)
        {
            findings.Warn(nameof(closure.Side), "closure-shows", ClosureTexts.Shows);
        }

        // A seam that is closed by hand has no sizes; buttons, ties and tape are on strips that overlap.
        ClosureSpecification? specified = kind switch
        {
            ClosureKind.HandSewn => new HandSewnClosure(side),
            ClosureKind.Zipper => ZipperIntake.Read(closure, fields, side, body, findings),
            _ => OverlapIntake.Read(closure, fields, side, body, findings),
        };
        if (body.Outline is { } outline && specified is not null)
        {
            OutlineTakes(outline, specified, body, findings);
        }

        return specified;
    }

    // Whether the construction takes the closure, and at this side.
    private static bool IsOffered(Closure closure, ClosureKind kind, ConstructionOffer offer, Findings findings)
    {
        ImmutableArray<Side> sides = offer.SidesFor(kind);
        if (sides.IsEmpty)
        {
            findings.Refuse(
                nameof(closure.Kind),
                "not-combinable",
                ClosureTexts.NotOffered(offer.Kind, kind, offer.Closures.Select(one => one.Kind))
            );
        }
        else if (closure.Side is { } side && !sides.Contains(side))
        {
            findings.Refuse(nameof(closure.Side), "not-combinable", ClosureTexts.SideNotOffered(kind, offer.Kind, sides));
        }
        else
        {
            return true;
        }

        return false;
    }

    // Whether the outline has the side, and whether the lines of a closure across the underside cut it into two parts.
    private static void OutlineTakes(Outline outline, ClosureSpecification closure, CushionBody body, Findings findings)
    {
        // What the closure's two lines are apart: the depth of a lap, or of an overlap.
        Length? lap = closure switch
        {
            ZipperClosure zipper => zipper.Lap,
            OverlappingClosure overlapping => overlapping.Overlap,
            _ => null,
        };
        bool zips = closure is ZipperClosure;
        // A closure as deep as the outline itself has nothing to divide.
        bool sideways = body.FlapsSideways;
        if (
            closure.Side == Side.Bottom
            && lap < (sideways ? outline.Width : outline.Depth)
            && !ClosureLine.Divides(outline, lap.Value, zips, sideways)
        )
        {
            findings.Refuse(nameof(Closure.Side), "not-combinable", ClosureTexts.Underside);
        }
        else if (closure.Side != Side.Bottom && !body.HasSide(closure.Side))
        {
            findings.Refuse(nameof(Closure.Side), "not-combinable", ClosureTexts.NoSide(outline.Kind, closure.Side));
        }

        // A boxing that is joined at the corners needs corners.
        if (!outline.HasCorners && body is { Joins: BoxingJoins.Corners, HasJoins: true })
        {
            body.At.Refuse("Boxing.Joins", "not-combinable", ClosureTexts.CurvedBoxing(outline.Kind));
        }
    }
}
