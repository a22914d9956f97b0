using System.Text;
using System.Text.Json.Nodes;
using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Desk;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;
using CushionService.Json;

namespace CushionService.Tests.Orders.Covers;

/// <summary>Sound orders over every construction, outline, closure, side and edging that go together, in every unit, plain and printed;
/// the same number always makes the same order.</summary>
internal sealed class CoverOrders
{
    private const int Attempts = 40;

    // Spreads the combinations over the numbers: prime, and no divisor of how many there are.
    private const int Stride = 7919;

    private static readonly OrderDesk Desk = new();

    private readonly Sizes _sizes;
    private readonly string[] _fabrics;
    private readonly bool _stocked;

    private CoverOrders(int seed)
    {
        _sizes = new Sizes(seed);
        _fabrics = [.. new[] { "main", "trim", "calico" }.Take(_sizes.Whole(1, 3))];
        _stocked = _sizes.Chance(60);
    }

    /// <summary>Every construction, outline, closure, side and edging that go together.</summary>
    public static IReadOnlyList<(
        ConstructionOffer Offer,
        OutlineKind Outline,
        ClosureKind Closure,
        Side Side,
        EdgingKind Edging
    )> Combinations { get; } =
    [
        .. from construction in ConstructionRegistry.All
        let offer = construction.Offer
        from outline in offer.Outlines
        from closure in offer.Closures
        from side in closure.Sides
        from edging in (EdgingKind[])
            [EdgingKind.Plain, .. offer.Edgings.Select(edging => edging.Kind).Where(kind => kind < EdgingKind.FlatPiping)]
        select (offer, outline, closure.Kind, side, edging),
    ];

    /// <summary>The order of a number, as a caller writes it.</summary>
    /// <param name="number">At least zero.</param>
    /// <param name="effort">How hard the service is asked to search.</param>
    /// <returns>An order that breaks no rule; null where none of the attempts made one, as for a closure that an outline has no side
    /// for.</returns>
    public static JsonObject? Order(int number, string effort)
    {
        for (int attempt = 0; attempt < Attempts; attempt++)
        {
            JsonObject order = new CoverOrders((number * Attempts) + attempt).Whole(number, effort);
            ReceivedOrder received = OrderText.Parse(Encoding.UTF8.GetBytes(order.ToJsonString()));
            if (Desk.Handle(received, Purposes.Validation, CancellationToken.None).Answer is ValidationAnswer { Valid: true })
            {
                return order;
            }
        }

        return null;
    }

    private JsonObject Whole(int number, string effort)
    {
        int cushions = _sizes.Chance(70) ? 1 : _sizes.Whole(2, 4);
        JsonObject order = new()
        {
            ["reference"] = $"cover-{number}",
            ["units"] = _sizes.Units,
            ["currency"] = "EUR",
            ["effort"] = effort,
            ["cushions"] = new JsonArray([.. Enumerable.Range(0, cushions).Select(i => Cushion($"cushion-{i + 1}", number + (i * 31)))]),
            ["fabrics"] = new JsonArray([.. _fabrics.Select(id => CoverFabrics.Fabric(id, _sizes))]),
        };
        if (_stocked)
        {
            (order["stocks"], order["prices"]) = CoverFabrics.Shop(_sizes);
        }

        if (cushions > 1 && _sizes.Chance(30))
        {
            order["rows"] = new JsonArray(
                new JsonObject
                {
                    ["id"] = "row",
                    ["cushions"] = new JsonArray([.. Enumerable.Range(1, cushions).Select(i => (JsonNode)$"cushion-{i}")]),
                    ["print"] = _sizes.Pick("continuous", "same"),
                }
            );
        }

        if (_sizes.Chance(10))
        {
            order["bays"] = new JsonArray(Bay());
        }

        if (_sizes.Chance(30))
        {
            order["costing"] = Costing();
        }

        return order;
    }

    private JsonObject Cushion(string id, int combination)
    {
        (ConstructionOffer offer, OutlineKind outline, ClosureKind closure, Side side, EdgingKind edging) = Combinations[
            (int)((long)combination * Stride % Combinations.Count)
        ];
        bool corners = !offer.Joins.IsEmpty && side != Side.Back && side != Side.Bottom,
            long_ = outline == OutlineKind.Rectangle && _sizes.Chance(15);
        JsonObject cushion = new()
        {
            ["id"] = id,
            ["quantity"] = _sizes.Chance(5) ? _sizes.Whole(10, 60) : _sizes.Whole(1, 4),
            ["construction"] = Words<Construction>.Of(offer.Kind),
            ["outline"] = CoverOutlines.Of(outline, long_ ? 110 : 40, _sizes),
            ["closure"] = CoverTrims.Closure(closure, side, offer, _sizes),
            ["fabrics"] = Fabrics(offer),
        };
        double? thickness = offer.Thickness
            ? _sizes.Between(offer.Kind == Construction.Pouf ? 8 : 2, offer.Kind == Construction.Pouf ? 18 : 6)
            : null;
        if (thickness is { } thick)
        {
            cushion["thickness"] = _sizes.Written(thick);
        }

        if (!offer.Joins.IsEmpty && (corners || _sizes.Chance(50)))
        {
            corners |= _sizes.Chance(50);
            cushion["boxing"] = new JsonObject { ["joins"] = corners ? "corners" : "back" };
        }

        if (offer.EdgingOf(edging) is { } edged)
        {
            // What follows a seam as a welt does takes its place in turn.
            EdgingOffer[] choices = [edged, .. offer.Edgings.Where(one => one.Kind >= EdgingKind.FlatPiping)];
            cushion["edging"] = CoverTrims.Edging(
                edging == EdgingKind.Welt ? choices[combination / 7 % choices.Length] : edged,
                corners,
                _sizes
            );
        }

        Fields(cushion, offer, outline);
        if (long_)
        {
            cushion["faceJoins"] = "allow";
        }

        if (_sizes.Chance(25))
        {
            cushion["match"] = new JsonObject
            {
                ["faces"] = _sizes.Pick("centred", "free"),
                ["underside"] = _sizes.Pick("as-top", "free"),
                ["boxing"] = _sizes.Pick("front", "all-round", "free"),
            };
        }

        if (_sizes.Chance(15))
        {
            cushion["edgeFinish"] = _sizes.Pick("overedge", "zigzag", "pinked", "bound", "none");
        }

        if (_sizes.Chance(15))
        {
            cushion["grain"] = _sizes.Pick("up-the-bolt", "railroaded", "either");
        }

        CoverTrims.Additions(cushion, offer, _sizes);
        if (CoverTrims.Fill(offer, outline, _stocked, thickness, _sizes) is { } fill)
        {
            cushion["fill"] = fill;
        }

        return cushion;
    }

    private JsonObject Fabrics(ConstructionOffer offer)
    {
        JsonObject fabrics = new() { ["top"] = _fabrics[0] };
        if (offer.Kind != Construction.Waterfall && _sizes.Chance(30))
        {
            fabrics["bottom"] = _sizes.Pick(_fabrics);
        }

        if (offer.Thickness && _sizes.Chance(30))
        {
            fabrics["sides"] = _sizes.Pick(_fabrics);
        }

        return fabrics;
    }

    // Fields of a construction's own: all that it cannot do without, and now and then the others.
    private void Fields(JsonObject cushion, ConstructionOffer offer, OutlineKind outline)
    {
        foreach (FieldOffer field in offer.Fields.Where(field => field.Required || _sizes.Chance(30)))
        {
            switch (field.Field)
            {
                case ConstructionField.Length:
                    cushion["length"] = _sizes.Length(12, 60);
                    break;
                case ConstructionField.FrontThickness:
                    cushion["frontThickness"] = _sizes.Between(0.5, 1.5);
                    break;
                case ConstructionField.Front:
                    cushion["front"] = _sizes.Pick("square", "bull-nose");
                    break;
                case ConstructionField.Ends:
                    cushion["ends"] = new JsonObject { ["kind"] = _sizes.Pick("flat", "gathered", "tied") };
                    break;
                case ConstructionField.Flange:
                    cushion["flange"] = new JsonObject { ["layers"] = _sizes.Pick("single", "double"), ["width"] = _sizes.Between(1, 3) };
                    break;
                case ConstructionField.Gores:
                    cushion["gores"] = _sizes.Whole(3, 12);
                    break;
                case ConstructionField.Channels when outline == OutlineKind.Rectangle:
                    cushion["channels"] = new JsonObject
                    {
                        ["count"] = _sizes.Whole(2, 6),
                        ["direction"] = _sizes.Pick("lengthwise", "across"),
                    };
                    break;
                case ConstructionField.CornerTaper when outline == OutlineKind.Rectangle:
                    cushion["cornerTaper"] = _sizes.Of(0.5);
                    break;
                case ConstructionField.InnerCover:
                    cushion["innerCover"] = new JsonObject { ["fabric"] = _fabrics[^1] };
                    break;
            }
        }
    }

    private JsonObject Bay() =>
        new()
        {
            ["id"] = "bay",
            ["construction"] = "boxed",
            ["walls"] = new JsonArray(_sizes.Between(30, 40), _sizes.Between(36, 48), _sizes.Between(30, 40)),
            ["angles"] = new JsonArray(_sizes.Whole(110, 170), _sizes.Whole(110, 170)),
            ["depth"] = _sizes.Between(12, 18),
            ["thickness"] = _sizes.Between(2, 4),
            ["closure"] = new JsonObject { ["kind"] = _sizes.Pick("zipper", "hand-sewn") },
            ["fabrics"] = new JsonObject { ["top"] = _fabrics[0] },
        };

    private JsonObject Costing() =>
        new()
        {
            ["charges"] = new JsonArray(
                new JsonObject
                {
                    ["label"] = "Cutting",
                    ["amount"] = "1.25",
                    ["per"] = _sizes.Pick("order", "cushion", "cut"),
                }
            ),
            ["discount"] = new JsonObject { ["percent"] = 7.5 },
            ["tax"] = new JsonObject { ["label"] = "Sales tax", ["rate"] = 0.0825 },
        };
}
