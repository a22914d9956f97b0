using System.Collections.Immutable;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Patterns.Constructions;

/// <summary>What a construction can be combined with.</summary>
public sealed record ConstructionOffer
{
    /// <summary>The construction.</summary>
    public required Construction Kind { get; init; }

    /// <summary>What it is, in a sentence.</summary>
    public required Message Description { get; init; }

    /// <summary>The outlines that it takes.</summary>
    public required ImmutableArray<OutlineKind> Outlines { get; init; }

    /// <summary>The closures that it takes.</summary>
    public required ImmutableArray<ClosureOffer> Closures { get; init; }

    /// <summary>Whether it has a thickness.</summary>
    public required bool Thickness { get; init; }

    /// <summary>The ways its boxing may be joined; empty when it has none.</summary>
    public ImmutableArray<BoxingJoins> Joins { get; init; } = [];

    /// <summary>The handles that it takes.</summary>
    public ImmutableArray<HandleKind> Handles { get; init; } = [];

    /// <summary>The edgings that it takes, besides plain seams.</summary>
    public ImmutableArray<EdgingOffer> Edgings { get; init; } = [];

    /// <summary>What may be added to it besides.</summary>
    public ImmutableArray<AdditionKind> Additions { get; init; } = [];

    /// <summary>Fields of its own.</summary>
    public ImmutableArray<FieldOffer> Fields { get; init; } = [];

    /// <summary>Whether a zipper on a side is set into the seam there, and not into a section of its own.</summary>
    public bool ZipperInSeam { get; init; }

    /// <summary>Whether the flaps of an envelope may hang from either pair of sides.</summary>
    public bool FlapsEitherWay { get; init; }

    /// <summary>Whether a zipper may run round three sides of the boxing.</summary>
    public bool ZipsThreeSides { get; init; }

    /// <summary>Whether foam can be cut to fill it: a thickness, or a length, makes a block of its outline.</summary>
    public bool HasBlock => Thickness || Takes(ConstructionField.Length);

    /// <summary>Whether it takes a field.</summary>
    /// <param name="field">A field that not every construction has.</param>
    public bool Takes(ConstructionField field) => Offered(field) is not null;

    /// <summary>Whether it cannot do without a field.</summary>
    /// <param name="field">A field that not every construction has.</param>
    public bool Requires(ConstructionField field) => Offered(field) is { Required: true };

    /// <summary>An edging that it takes; null where it does not.</summary>
    /// <param name="kind">The edging.</param>
    public EdgingOffer? EdgingOf(EdgingKind kind) => Edgings.FirstOrDefault(offer => offer.Kind == kind);

    /// <summary>The sides on which a closure may stand; empty when it is not offered.</summary>
    /// <param name="closure">The closure.</param>
    /// <returns>The first is the usual one.</returns>
    public ImmutableArray<Side> SidesFor(ClosureKind closure)
    {
        foreach (ClosureOffer offer in Closures)
        {
            if (offer.Kind == closure)
            {
                return offer.Sides;
            }
        }

        return [];
    }

    private FieldOffer? Offered(ConstructionField field)
    {
        foreach (FieldOffer offer in Fields)
        {
            if (offer.Field == field)
            {
                return offer;
            }
        }

        return null;
    }
}
