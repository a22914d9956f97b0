using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Patterns;

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
        int count = sides.Length, first = 0;
        while (sides[first].Side != side || sides[(first + count - 1) % count].Side == side)
        {
            if (++first == count)
            {
                throw new InvalidPatternException($"The outline has no {side} side.");
            }
        }

        var section = ImmutableArray.CreateBuilder<OutlineSide>();
        var rest = ImmutableArray.CreateBuilder<OutlineSide>();
        for (var i = 0; i < count; i++)
        {
            OutlineSide stretch = sides[(first + i) % count];
            (stretch.Side == side && rest.Count == 0 ? section : rest).Add(stretch);
        }

        if (turn > Length.Zero)
        {
            OutlineSide after = rest[0], before = rest[^1];
            (var near, var far) = after.Split(turn);
            rest[0] = after with { Path = far };
            section.Add(after with { Name = $"{after.Name}-return", Path = near });
            (far, near) = rest[^1].Split(rest[^1].Length - turn);
            rest[^1] = rest[^1] with { Path = far };
            section.Insert(0, before with { Name = $"{before.Name}-{(rest.Count == 1 ? "start" : "return")}", Path = near });
        }

        ImmutableArray<OutlineSide> all = [.. section, .. rest];
        int start = Math.Max(0, all.IndexOf(all.FirstOrDefault(stretch => stretch.Name == sides[0].Name)!));
        return new Circuit(section.ToImmutable(), rest.ToImmutable(), [.. all[start..], .. all[..start]]);
    }
}
