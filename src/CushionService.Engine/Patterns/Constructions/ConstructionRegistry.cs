using System.Collections.Immutable;
using System.Reflection;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Patterns.Constructions;

/// <summary>All constructions that the engine drafts, found by their type, so that a new one is one new file.</summary>
public static class ConstructionRegistry
{
    /// <summary>Every construction, in the order of <see cref="Construction"/>.</summary>
    public static ImmutableArray<IConstruction> All { get; } = In(Assembly.GetExecutingAssembly());

    /// <summary>The constructions that an assembly holds, in the order of <see cref="Construction"/>.</summary>
    /// <param name="assembly">An assembly; the tests have constructions of their own.</param>
    public static ImmutableArray<IConstruction> In(Assembly assembly) =>
        [
            .. assembly
                .GetTypes()
                .Where(type => type.IsClass && typeof(IConstruction).IsAssignableFrom(type))
                .Select(type => (IConstruction)Activator.CreateInstance(type, nonPublic: true)!)
                .OrderBy(construction => construction.Offer.Kind),
        ];

    /// <summary>The engine's construction of that kind.</summary>
    /// <param name="kind">The kind.</param>
    /// <exception cref="ArgumentOutOfRangeException">The enumeration has a member that no class drafts.</exception>
    public static IConstruction Of(Construction kind) => Of(kind, All);

    /// <summary>The construction of that kind.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="among">The constructions to look among.</param>
    /// <exception cref="ArgumentOutOfRangeException">None of them is of that kind.</exception>
    public static IConstruction Of(Construction kind, ImmutableArray<IConstruction> among)
    {
        foreach (IConstruction construction in among)
        {
            if (construction.Offer.Kind == kind)
            {
                return construction;
            }
        }

        throw new ArgumentOutOfRangeException(nameof(kind));
    }
}
