using System.Collections.Immutable;
using System.Globalization;
using System.Linq.Expressions;
using CushionService.Contract.Orders;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Practices;
using Bay = CushionService.Contract.Orders.Bay;
using BayGeometry = CushionService.Engine.Specifications.Outlines.Bay;
using Outline = CushionService.Contract.Orders.Outline;

namespace CushionService.Intake;

/// <summary>Checks bays, and makes a cushion of each of their walls.</summary>
/// <remarks>What is wrong with a field of all of them is found with each, and reported once, at the bay.</remarks>
internal static class BayIntake
{
    private static readonly LengthField<Bay> Depth = RecordForm<Bay>.Length(nameof(Bay.Depth)),
        Bulk = RecordForm<Bay>.Length(nameof(Bay.Bulk));
    private static readonly Func<Bay, string, string?, Cushion> Make = Maker();

    /// <summary>The cushions of an order's bays; none of a bay whose walls make no seats.</summary>
    /// <param name="order">The order as written.</param>
    /// <param name="context">Its practice.</param>
    /// <param name="findings">Takes what is wrong with the whole order.</param>
    public static IEnumerable<OrderedCushion> Read(Order order, OrderContext context, Findings findings)
    {
        // The ids of a bay's cushions are made from its own, and may meet one that the order gave.
        HashSet<string> taken = [.. (order.Cushions ?? []).Select(cushion => cushion?.Id).OfType<string>()];
        foreach ((int i, Bay? bay) in (order.Bays ?? []).Index())
        {
            if (bay is null)
            {
                continue;
            }

            Findings at = findings.Within(nameof(order.Bays), i);
            BayGeometry? seats = Seats(bay, context.Practice, at);
            foreach ((int wall, string id) in Ids(bay).Index())
            {
                if (!taken.Add(id))
                {
                    at.Refuse(nameof(bay.Id), "duplicate", OrderTexts.BayCushionTaken(id));
                }

                string? label = bay.Label is { } name
                    ? string.Create(CultureInfo.InvariantCulture, $"{name} {wall + 1}/{bay.Walls!.Count}")
                    : null;
                if (seats is not null)
                {
                    // Findings of the cushion are reported at its bay: the caller wrote no cushion.
                    yield return new OrderedCushion(Make(bay, id, label), $"/bays/{i}", at, seats.Seat(wall));
                }
            }
        }
    }

    /// <summary>The ids of a bay's cushions, from left to right; none for one without an id or walls.</summary>
    /// <param name="bay">The bay as written: its id, a hyphen and the wall's number from 1.</param>
    public static ImmutableArray<string> Ids(Bay bay) =>
        bay is { Id: { } id, Walls: { } walls }
            ? [.. Enumerable.Range(1, walls.Count).Select(number => string.Create(CultureInfo.InvariantCulture, $"{id}-{number}"))]
            : [];

    // The seats; null where one of their sizes is missing or wrong, or they cannot lie in a room.
    private static BayGeometry? Seats(Bay bay, WorkroomPractice practice, Findings at)
    {
        Fields<Bay> fields = RecordForm<Bay>.Read(bay, at);
        if (bay.Construction is { } kind && Enum.IsDefined(kind) && ConstructionRegistry.Of(kind).Offer is var offer)
        {
            if (!offer.Outlines.Contains(OutlineKind.Trapezoid))
            {
                at.Refuse(nameof(bay.Construction), "not-combinable", OrderTexts.BayConstruction(kind));
                return null;
            }
        }

        if (
            bay is not { Walls: { } walls, Angles: { } angles }
            || EntryCheck.Lengths(walls, typeof(Bay).GetProperty(nameof(bay.Walls))!, at) is not { } lengths
            || !EntryCheck.Numbers(angles, typeof(Bay).GetProperty(nameof(bay.Angles))!, at)
            || fields[Depth] is not { } depth
            || fields.Or(Bulk, practice.Shapes.BayBulk) is not { } bulk
            // As the range of the walls says; out of it, nothing is reckoned from them.
            || walls.Count is < 2 or > 7
        )
        {
            return null;
        }

        if (angles.Count != walls.Count - 1)
        {
            at.Refuse(
                nameof(bay.Angles),
                "out-of-range",
                OrderTexts.BayAngles(walls.Count, walls.Count - 1),
                new FindingRange(walls.Count - 1, walls.Count - 1)
            );
            return null;
        }

        BayGeometry seats = new(lengths, [.. angles], depth, bulk);
        return LieInARoom(seats, at) ? seats : null;
    }

    // First each wall by itself, against the seats at its corners; only then whether two seats would lie on each other.
    private static bool LieInARoom(BayGeometry seats, Findings at)
    {
        bool sound = true;
        for (int wall = 0; wall < seats.Walls.Length; wall++)
        {
            if (seats.ShortestWall(wall) is var least && seats.Walls[wall] < least)
            {
                at.RefuseRange($"{nameof(Bay.Walls)}[{wall}]", "out-of-range", OrderTexts.BayWall(wall + 1, least), least, null);
                sound = false;
            }
        }

        if (sound && new BayPlan(seats).Overlap() is var (one, other))
        {
            at.Refuse(nameof(Bay.Walls), "not-a-shape", OrderTexts.BaySeatsOverlap(one + 1, other + 1));
            return false;
        }

        return sound;
    }

    // A cushion of a bay: everything that the bay says, an id, a label and the kind of its outline. Compiled once, by reflection, so that a
    // new field of both needs no code here.
    private static Func<Bay, string, string?, Cushion> Maker()
    {
        ParameterExpression bay = Expression.Parameter(typeof(Bay)),
            id = Expression.Parameter(typeof(string)),
            label = Expression.Parameter(typeof(string));
        IEnumerable<MemberAssignment> shared = typeof(CushionMake)
            .GetProperties()
            .Select(property =>
                Expression.Bind(
                    property,
                    property.Name switch
                    {
                        nameof(CushionMake.Id) => id,
                        nameof(CushionMake.Label) => label,
                        _ => Expression.Property(bay, property),
                    }
                )
            );
        return Expression
            .Lambda<Func<Bay, string, string?, Cushion>>(
                Expression.MemberInit(
                    Expression.New(typeof(Cushion)),
                    [
                        .. shared,
                        Expression.Bind(
                            typeof(Cushion).GetProperty(nameof(Cushion.Outline))!,
                            Expression.Constant(new Outline { Kind = OutlineKind.Trapezoid })
                        ),
                    ]
                ),
                bay,
                id,
                label
            )
            .Compile();
    }
}
