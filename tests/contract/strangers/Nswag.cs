using Cushions;

// A quote and a refusal with the client that NSwag makes. A length is a number there, in the order's units.
using HttpClient http = new();
Client client = new(http) { BaseUrl = args[0] };
Order order = new()
{
    Units = Units.In,
    Cushions =
    [
        new Cushion
        {
            Id = "pillow",
            Construction = Construction.KnifeEdge,
            Outline = new Outline
            {
                Kind = OutlineKind.RoundedRectangle,
                Width = 18,
                Depth = 18,
                CornerRadius = 2,
            },
            Closure = new Closure { Kind = ClosureKind.Zipper, Side = Side.Back },
        },
    ],
    Fabrics =
    [
        new Fabric
        {
            Id = "linen",
            Width = 54,
            Sold = new Sale { Unit = SaleUnit.Yd, Step = 0.125 },
        },
    ],
};
YardageLine line = (await client.QuoteAsync(null, null, null, null, order)).Yardage.Single();
Console.WriteLine($"{line.Fabric} {line.SoldLength}");
try
{
    order.Cushions.Single().Outline!.Width = 0;
    await client.QuoteAsync(null, null, null, null, order);
}
catch (ApiException<Problem> refused)
{
    Console.WriteLine($"{refused.Result.Code} {refused.Result.Violations.First().Pointer}");
}
