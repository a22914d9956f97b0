namespace CushionService.BrowserTests.Hosting;

/// <summary>Pages of a shop on another origin, under a policy that allows the service and nothing inline.</summary>
internal static class ShopPages
{
    /// <summary>A bench of plain linen, or of cheaper canvas.</summary>
    public const string Bench = """
        { "order": { "units": "in", "currency": "USD", "cushions": [{ "id": "bench", "construction": "boxed",
          "outline": { "kind": "rectangle", "width": 44, "depth": 18 }, "thickness": 3, "closure": { "kind": "zipper", "side": "back" } }],
          "fabrics": [
            { "id": "linen", "label": "Plain linen", "width": 54, "selvedge": "1/2", "shrinkage": { "length": 0, "width": 0 },
              "sold": { "unit": "yd", "step": "1/8" }, "price": { "amount": "18.90", "per": "yd" } },
            { "id": "canvas", "label": "Canvas", "width": 48, "shrinkage": { "length": 0, "width": 0 },
              "sold": { "unit": "yd", "step": "1/8" }, "price": { "amount": "9.50", "per": "yd" } }] } }
        """;

    /// <summary>The element with an order.</summary>
    /// <param name="attributes">Its attributes.</param>
    /// <param name="json">What is in its script; none for an element without one.</param>
    public static string Element(string attributes = "", string json = Bench) =>
        $"<cushion-estimate {attributes}>"
        + (json.Length == 0 ? "" : $"<script type=\"application/json\">{json}</script>")
        + "</cushion-estimate>";

    /// <summary>Opens a page of the shop.</summary>
    public static async Task<ShownPage> OpenShopAsync(
        this BrowserOfThisMachine browser,
        string body,
        string language = "en",
        string style = "",
        int width = 1280,
        string scripts = "",
        bool mayCompile = false
    )
    {
        ShownPage shown = await browser.OpenEmptyAsync(width);
        await browser.ShowShopAsync(shown, body, language, style, scripts: scripts, mayCompile: mayCompile);
        return shown;
    }

    /// <summary>Shows a page of the shop in a page that is open.</summary>
    public static async Task ShowShopAsync(
        this BrowserOfThisMachine browser,
        ShownPage shown,
        string body,
        string language = "en",
        string style = "",
        string module = "/widget/v1/cushion-estimate.js",
        string? integrity = null,
        string scripts = "",
        string shop = BrowserOfThisMachine.Shop,
        string? service = null,
        bool mayCompile = false
    )
    {
        service ??= browser.Origin;
        await shown.Page.RouteAsync(
            $"{shop}/shop.css",
            route =>
                route.FulfillAsync(new() { ContentType = "text/css", Body = "cushion-estimate { --cushion-accent: #5a2d6d; }" + style })
        );
        await shown.Page.RouteAsync(
            $"{shop}/shop.js",
            route => route.FulfillAsync(new() { ContentType = "text/javascript; charset=utf-8", Body = scripts })
        );
        string compiling = mayCompile ? "'unsafe-eval'" : "";
        string checkedBy = integrity is null ? "" : $"integrity=\"{integrity}\" crossorigin=\"anonymous\"";
        await shown.Page.RouteAsync(
            $"{shop}/",
            route =>
                route.FulfillAsync(
                    new()
                    {
                        ContentType = "text/html; charset=utf-8",
                        Headers = new Dictionary<string, string>
                        {
                            ["Content-Security-Policy"] =
                                $"default-src 'none'; style-src 'self'; script-src 'self' {service} {compiling}; "
                                + $"connect-src {service}; img-src 'self'",
                        },
                        Body = $"""
                        <!DOCTYPE html><html lang="{language}"><title>Shop</title><link rel="icon" href="/icon.png">
                        <link rel="stylesheet" href="/shop.css">
                        <script type="module" src="{service}{module}" {checkedBy}></script>
                        <script type="module" src="/shop.js"></script>
                        {body}</html>
                        """,
                    }
                )
        );
        await shown.Page.RouteAsync($"{shop}/icon.png", route => route.FulfillAsync(new() { Status = 204 }));
        await shown.Page.GotoAsync($"{shop}/");
    }
}
