using System.Collections.Immutable;
using CushionService.Contract;
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
    private static readonly LengthField<Closure> Return = RecordForm<Closure>.Length(nameof(Closure.Return));

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
            findings.Refuse(nameof(closure.Side), "not-combinable", "With a wrapped boxing the closure must be at the back.");
        }

        Side side = body.ClosureSide!.Value;
        FieldsApply(closure, kind, body, findings);
        body.Return = Returned(fields, kind, body, findings);
        if (side == Side.Front)
        {
            findings.Warn(nameof(closure.Side), "closure-shows", "A closure at the front shows. It is usually at the back.");
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
        string construction = Words<Construction>.Of(offer.Kind),
            word = Words<ClosureKind>.Of(kind);
        if (sides.IsEmpty)
        {
            string others = string.Join(", ", offer.Closures.Select(one => Words<ClosureKind>.Of(one.Kind)));
            string detail = $"Construction {construction} cannot have closure {word}. Choose one of {others}.";
            findings.Refuse(nameof(closure.Kind), "not-combinable", detail);
        }
        else if (closure.Side is { } side && !sides.Contains(side))
        {
            string others = string.Join(", ", sides.Select(Words<Side>.Of));
            string detail = $"Closure {word} of construction {construction} must be at one of {others}.";
            findings.Refuse(nameof(closure.Side), "not-combinable", detail);
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
            findings.Refuse(
                nameof(Closure.Side),
                "not-combinable",
                "A closure across the underside must cut it into two parts. On this outline its lines cross the edge more than twice, run along an "
                    + "edge or close to an inside corner, or differ in length under a lapped zipper. Choose another side."
            );
        }
        else if (closure.Side != Side.Bottom && !body.HasSide(closure.Side))
        {
            string detail =
                $"Outline {Words<OutlineKind>.Of(outline.Kind)} has no {Words<Side>.Of(closure.Side)} side. Choose another side.";
            findings.Refuse(nameof(Closure.Side), "not-combinable", detail);
        }

        if (!outline.HasCorners && body is { Joins: BoxingJoins.Corners, HasJoins: true })
        {
            string detail = $"Outline {Words<OutlineKind>.Of(outline.Kind)} has curves. Its boxing must join at the back.";
            body.At.Refuse("Boxing.Joins", "not-combinable", detail);
        }
    }

    private static void FieldsApply(Closure closure, ClosureKind kind, CushionBody body, Findings findings)
    {
        bool overlaps = kind is ClosureKind.HookAndLoop or ClosureKind.Envelope or ClosureKind.Buttons or ClosureKind.Ties;
        bool zipper = kind == ClosureKind.Zipper,
            hooked = kind == ClosureKind.HookAndLoop;
        Only(body.HasReturns, closure.Return is not null, nameof(closure.Return));
        Only(zipper && (!body.ZipsSeam || closure.Lap is not null), closure.TurnUnder is not null, nameof(closure.TurnUnder));
        Only(zipper, closure.Lap is not null, nameof(closure.Lap));
        Only(overlaps, closure.Fold is not null, nameof(closure.Fold));
        Only(overlaps && !(hooked && closure.Strips == HookAndLoopStrips.AsSides), closure.Overlap is not null, nameof(closure.Overlap));
        Only(hooked, closure.TapeWidth is not null, nameof(closure.TapeWidth));
        Only(kind == ClosureKind.Buttons, closure.ButtonDiameter is not null, nameof(closure.ButtonDiameter));
        Only(kind == ClosureKind.Ties, closure.TieLength is not null, nameof(closure.TieLength));
        Only(hooked && body.Offer.Thickness && body.ClosureSide != Side.Bottom, closure.Strips is not null, nameof(closure.Strips));

        void Only(bool applies, bool given, string field)
        {
            if (given && !applies)
            {
                findings.NotApplicable(field, $"this closure {Words<ClosureKind>.Of(kind)}");
            }
        }
    }

    // A closure runs on round the corners of a straight back; a curved back it opens as it is, unless the order says how far.
    private static Length? Returned(Fields<Closure> fields, ClosureKind kind, CushionBody body, Findings findings)
    {
        if (!body.HasReturns)
        {
            return Length.Zero;
        }

        bool straight = body.Outline?.Sides.All(stretch => stretch.Side != Side.Back || stretch.IsStraight) ?? true;
        Length? turn = fields.Or(Return, kind == ClosureKind.Zipper && straight ? body.Practice.ZipperReturn : Length.Zero);
        if (turn is { Nanometres: > 0 } far && LongestReturn(body) is { } longest && far >= longest)
        {
            string detail = $"Return must be less than the stretch that it runs along, {findings.Text(longest)}.";
            findings.RefuseRange(Return.Name, "out-of-range", detail, Length.Zero, longest);
        }

        return turn;
    }

    // How far a closure at the back may run on: to the ends of the stretches beside it.
    private static Length? LongestReturn(CushionBody body)
    {
        if (body is not { Outline.Sides: var sides, ClosureSide: { } side } || sides.All(stretch => stretch.Side != side))
        {
            return null;
        }

        Length shortest = Length.MaxValue;
        for (int i = 0; i < sides.Length; i++)
        {
            OutlineSide next = sides[(i + 1) % sides.Length];
            if (sides[i].Side != side && next.Side == side)
            {
                shortest = Length.Min(shortest, sides[i].Length);
            }
            else if (sides[i].Side == side && next.Side != side)
            {
                shortest = Length.Min(shortest, next.Length);
            }
        }

        // Where one stretch lies on both sides of the closure, the two returns share it.
        bool shared = sides.Count(stretch => stretch.Side != side) == 1;
        return shared ? Length.FromNanometres(shortest.Nanometres / 2) : shortest;
    }
}
