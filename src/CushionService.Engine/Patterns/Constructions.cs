using System.Collections.Immutable;
using System.Reflection;
using CushionService.Engine.Specifications;

namespace CushionService.Engine.Patterns;

/// <summary>All constructions that the engine drafts, found by their type, so that a new one is one new file.</summary>
public static class Constructions
{
    /// <summary>Every construction, in the order of <see cref="Construction"/>.</summary>
    public static ImmutableArray<IConstruction> All { get; } = [.. Assembly.GetExecutingAssembly().GetTypes()
        .Where(type => type.IsClass && typeof(IConstruction).IsAssignableFrom(type))
        .Select(type => (IConstruction)Activator.CreateInstance(type, nonPublic: true)!)
        .OrderBy(construction => construction.Offer.Kind)];

    /// <summary>The construction of that kind.</summary>
    public static IConstruction Of(Construction kind)
    {
        foreach (IConstruction construction in All)
        {
            if (construction.Offer.Kind == kind)
            {
                return construction;
            }
        }

        throw new ArgumentOutOfRangeException(nameof(kind));
    }
}
