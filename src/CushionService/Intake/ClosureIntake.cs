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

        if (body is { HasJoins: true, Joins: BoxingJoins.Back, ClosureSide: not (Side.Back or Side.Bottom) })
        {
            findings.Refuse(nameof(closure.Side), "not-combinable", ClosureTexts.WrappedBoxing);
        }

        Side side = body.ClosureSide!.Value;
        ClosureFields.Check(closure, kind, body, findings);
        body.Return = ReturnIntake.Read(fields, kind, body, findings);
        if (side == Side.Front)
        {
            findings.Warn(nameof(closure.Side), "closure-shows", ClosureTexts.Shows);
        }

        ClosureSpecification? specified = kind switch
        {
            ClosureKind.HandSewn => new HandSewnClosure(side),
            ClosureKind.Zipper => ZipperIntake.Read(fields, side, body, findings),
            _ => OverlapIntake.Read(closure, fields, side, body, findings),
        };
        if (body.Outline is { } outline && specified is not null)
        {
            OutlineTakes(outline, specified, body, findings);
        }

        return specified;
    }

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

    private static void OutlineTakes(Outline outline, ClosureSpecification closure, CushionBody body, Findings findings)
    {
        Length? lap = closure switch
        {
            ZipperClosure zipper => zipper.Lap,
            OverlappingClosure overlapping => overlapping.Overlap,
            _ => null,
        };
        bool zips = closure is ZipperClosure;
        if (closure.Side == Side.Bottom && lap < outline.Depth && !ClosureLine.Divides(outline, lap.Value, zips))
        {
            findings.Refuse(nameof(Closure.Side), "not-combinable", ClosureTexts.Underside);
        }
        else if (closure.Side != Side.Bottom && !body.HasSide(closure.Side))
        {
            findings.Refuse(nameof(Closure.Side), "not-combinable", ClosureTexts.NoSide(outline.Kind, closure.Side));
        }

        if (!outline.HasCorners && body is { Joins: BoxingJoins.Corners, HasJoins: true })
        {
            body.At.Refuse("Boxing.Joins", "not-combinable", ClosureTexts.CurvedBoxing(outline.Kind));
        }
    }
}
