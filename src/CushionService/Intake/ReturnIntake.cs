using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Practices;

namespace CushionService.Intake;

/// <summary>Checks how far a closure at the back runs on round the corners, its return, and reads it.</summary>
internal static class ReturnIntake
{
    // Less is a bend that a zipper follows: about 11 degrees.
    private const double InsideTurn = 0.2;

    private static readonly LengthField<Closure> Return = RecordForm<Closure>.Length(nameof(Closure.Return));

    /// <summary>How far the closure runs on round each corner beside it; zero where it cannot, null where that was refused.</summary>
    /// <remarks>A zipper runs on round the corners of a straight back, so that the cover opens wide enough for its foam (common practice,
    /// no source). A curved back opens as it is, and so does one that ends at an inside corner, round which a zipper would not lie flat,
    /// unless the order says how far. On a side too short for the usual return the section ends in its middle, where its join is clear of
    /// both corners, and no return is made that is shorter than the workroom's shortest.</remarks>
    /// <param name="fields">The closure's fields.</param>
    /// <param name="kind">Its kind.</param>
    /// <param name="body">The cushion.</param>
    /// <param name="findings">Takes what is wrong with the closure.</param>
    public static Length? Read(Fields<Closure> fields, ClosureKind kind, CushionBody body, Findings findings)
    {
        if (!body.HasReturns)
        {
            return Length.Zero;
        }

        // A cushion without an outline that passed is taken for a straight one: its outline is reported already.
        bool straight = body.Outline?.Sides.All(stretch => stretch.Side != Side.Back || stretch.IsStraight) ?? true;
        bool runsOn = kind == ClosureKind.Zipper && straight && !EndsInside(body);
        Length? longest = LongestReturn(body),
            turn = fields.Or(Return, runsOn ? Usual(body.Practice, longest) : Length.Zero);
        if (turn is { Nanometres: > 0 } far && longest is { } limit && far >= limit)
        {
            findings.RefuseRange(Return.Name, "out-of-range", ClosureTexts.Return(limit), Length.Zero, limit);
        }

        return turn;
    }

    // The workroom's return, if what is left of the side keeps its join clear of the next corner (common practice, no source).
    private static Length Usual(WorkroomPractice practice, Length? longest)
    {
        if (longest is not { } side || side >= practice.ZipperReturn + practice.Joins.CornerClearance)
        {
            return practice.ZipperReturn;
        }

        long half = side.Nanometres / 2;
        Length middle = Length.Min(practice.ZipperReturn, Length.FromNanometres(half - (half % practice.CuttingStep.Nanometres)));
        return middle < practice.Closures.ShortestReturn ? Length.Zero : middle;
    }

    // Whether the closure's side ends at a corner that turns inward, as the floor of a notch does.
    private static bool EndsInside(CushionBody body)
    {
        if (body is not { Outline.Sides: var sides, ClosureSide: { } side })
        {
            return false;
        }

        for (int i = 0; i < sides.Length; i++)
        {
            OutlineSide next = sides[(i + 1) % sides.Length];
            double turn = Math.IEEERemainder(next.Path[0].StartDirection - sides[i].Path[^1].EndDirection, 2 * Math.PI);
            if (sides[i].Side == side != (next.Side == side) && turn < -InsideTurn)
            {
                return true;
            }
        }

        return false;
    }

    // How far a closure at the back may run on: to the ends of the stretches beside it.
    private static Length? LongestReturn(CushionBody body)
    {
        if (body is not { Outline.Sides: var sides, ClosureSide: { } side } || sides.All(stretch => stretch.Side != side))
        {
            return null;
        }

        Length shortest = Length.MaxValue;
        // The stretches before and after the closure's own, going round.
        for (int i = 0; i < sides.Length; i++)
        {
            OutlineSide next = sides[(i + 1) % sides.Length];
            // A return may run to the end of a stretch, and not beyond.
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
