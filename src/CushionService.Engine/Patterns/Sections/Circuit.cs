using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Patterns.Sections;

/// <summary>The seam line round a face, divided into the section of a closure and the rest.</summary>
/// <param name="Section">The section's stretches, counter-clockwise.</param>
/// <param name="Rest">The other stretches, counter-clockwise from the section's end to its start.</param>
/// <param name="All">All stretches, counter-clockwise from the start of the outline.</param>
internal sealed record Circuit(ImmutableArray<OutlineSide> Section, ImmutableArray<OutlineSide> Rest, ImmutableArray<OutlineSide> All)
{
    /// <summary>Divides an outline at a side and its returns.</summary>
    /// <param name="outline">The outline.</param>
    /// <param name="side">A side that it has.</param>
    /// <param name="turn">How far the section runs on beyond each end of the side; less than the neighbouring stretches are long.</param>
    public static Circuit Of(Outline outline, Side side, Length turn)
    {
        ImmutableArray<OutlineSide> sides = outline.Sides;
        int count = sides.Length,
            first = 0;
        // The first stretch of the side: one whose predecessor is of another side.
        while (sides[first].Side != side || sides[(first + count - 1) % count].Side == side)
        {
            if (++first == count)
            {
                throw new InvalidPatternException($"The outline has no {side} side.");
            }
        }

        // From the section's start all the way round.
        ReadOnlySpan<OutlineSide> round = [.. sides.AsSpan()[first..], .. sides.AsSpan()[..first]];
        var on = 1;
        while (round[on].Side == side)
        {
            on++;
        }

        ImmutableArray<OutlineSide> section = [.. round[..on]];
        OutlineSide[] rest = [.. round[on..]];
        if (turn > Length.Zero)
        {
            OutlineSide after = rest[0],
                before = rest[^1];
            (var near, var far) = after.Split(turn);
            rest[0] = after with { Path = far };
            after = after with { Name = after.Name.With(EdgeWord.Return), Path = near };
            (far, near) = rest[^1].Split(rest[^1].Length - turn);
            rest[^1] = rest[^1] with { Path = far };
            before = before with { Name = before.Name.With(rest.Length == 1 ? EdgeWord.Start : EdgeWord.Return), Path = near };
            section = [before, .. section, after];
        }

        return new Circuit(section, [.. rest], FromStart([.. section, .. rest], sides[0].Name));
    }

    /// <summary>Divides an outline at a side and the whole of both its neighbours.</summary>
    /// <param name="outline">The outline, which <see cref="HasThree"/>.</param>
    /// <param name="side">The side in the middle.</param>
    public static Circuit OfThree(Outline outline, Side side)
    {
        ImmutableArray<OutlineSide> sides = outline.Sides;
        Circuit one = Of(outline, side, Length.Zero);
        (Side after, Side before) = (one.Rest[0].Side, one.Rest[^1].Side);
        int on = one.Rest.TakeWhile(run => run.Side == after).Count(),
            back = one.Rest.Reverse().TakeWhile(run => run.Side == before).Count();
        ImmutableArray<OutlineSide> section = [.. one.Rest[^back..], .. one.Section, .. one.Rest[..on]],
            rest = [.. one.Rest[on..^back]];
        return new Circuit(section, rest, FromStart([.. section, .. rest], sides[0].Name));
    }

    /// <summary>Whether a side has a neighbour at each end, and another across from it.</summary>
    public static bool HasThree(Outline outline, Side side)
    {
        if (outline.Sides.All(run => run.Side != side))
        {
            return false;
        }

        ImmutableArray<OutlineSide> rest = Of(outline, side, Length.Zero).Rest;
        int on = rest.TakeWhile(run => run.Side == rest[0].Side).Count(),
            back = rest.Reverse().TakeWhile(run => run.Side == rest[^1].Side).Count();
        return rest.Length > on + back && rest[0].Side != rest[^1].Side;
    }

    // What the outline starts with may have become the section's: then all starts with the section.
    private static ImmutableArray<OutlineSide> FromStart(ReadOnlySpan<OutlineSide> all, EdgeName name)
    {
        var start = 0;
        for (var i = all.Length - 1; i >= 0; i--)
        {
            start = all[i].Name == name ? i : start;
        }

        return [.. all[start..], .. all[..start]];
    }
}
