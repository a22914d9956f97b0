using CushionService.Contract;
using CushionService.Contract.Orders;

namespace CushionService.Rest.OpenApi;

/// <summary>The order of the examples as each call wants it.</summary>
internal static class ExampleOrders
{
    /// <summary>The order for an operation: a comparison has candidates, and a fit has fabric on hand.</summary>
    /// <param name="operation">The operation's name in the document.</param>
    public static Order For(string? operation) =>
        operation switch
        {
            "compare" => Examples.Nook with
            {
                Candidates =
                [
                    new Candidate { Fabric = "main", Options = [Examples.Nook.Fabrics![0] with { Id = "wide", Width = Measure.Of(60) }] },
                ],
            },
            "fit" => Examples.Nook with
            {
                Fabrics =
                [
                    Examples.Nook.Fabrics![0] with
                    {
                        OnHand = [new Offcut { Width = Measure.Of(53), Length = Measure.Of(120) }],
                    },
                    Examples.Nook.Fabrics[1],
                ],
            },
            _ => Examples.Nook,
        };
}
