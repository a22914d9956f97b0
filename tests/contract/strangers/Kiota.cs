using Cushions;
using Cushions.Models;
using Microsoft.Kiota.Abstractions.Authentication;
using Microsoft.Kiota.Http.HttpClientLibrary;

// A quote and a refusal with the client that Kiota makes.
CushionsClient client = new(new HttpClientRequestAdapter(new AnonymousAuthenticationProvider()) { BaseUrl = args[0] });
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
                Width = new() { Double = 18 },
                Depth = new() { String = "18" },
                CornerRadius = new() { Double = 2 },
            },
            Closure = new Closure { Kind = ClosureKind.Zipper, Side = Side.Back },
        },
    ],
    Fabrics =
    [
        new Fabric
        {
            Id = "linen",
            Width = new() { Double = 54 },
            Sold = new Sale
            {
                Unit = SaleUnit.Yd,
                Step = new() { String = "1/8" },
            },
        },
    ],
};
YardageLine line = (await client.V1.Quotes.PostAsync(order))!.Yardage![0];
Console.WriteLine($"{line.Fabric} {line.SoldLength}");
try
{
    order.Cushions[0].Outline!.Width = new() { Double = 0 };
    await client.V1.Quotes.PostAsync(order);
}
catch (Problem refused)
{
    Console.WriteLine($"{refused.Code} {refused.Violations![0].Pointer}");
}
