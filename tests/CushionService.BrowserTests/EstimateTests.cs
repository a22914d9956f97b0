using System.Net.Http.Json;
using System.Text.Json;
using CushionService.BrowserTests.Hosting;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace CushionService.BrowserTests;

[Collection(BrowserGroup.Name)]
public sealed class EstimateTests(BrowserOfThisMachine browser)
{
    private const string Width = "/cushions/*/outline/width",
        Depth = "/cushions/*/outline/depth",
        Thickness = "/cushions/*/thickness";

    [SkippableTheory]
    [InlineData("22", "20", "3", "Plain linen")]
    [InlineData("45 1/2", "18 3/4", "3-1/8", "Plain linen")]
    [InlineData("30", "24", "4", "Narrow canvas")]
    [InlineData("38.5 cm", "40", "50 mm", "Printed cotton, leaves growing upwards")]
    public async Task What_is_typed_gets_the_yardage_that_the_service_gives(string width, string depth, string thickness, string fabric)
    {
        await using ShownPage shown = await browser.OpenAsync();
        await shown.StateAsync("answered");
        await shown.EstimateAsync(() => shown.Field(Width).FillAsync(width));
        await shown.EstimateAsync(() => shown.Field(Depth).FillAsync(depth));
        await shown.EstimateAsync(() => shown.Field("/cushions/*/fabrics/top").SelectOptionAsync(new SelectOptionValue { Label = fabric }));
        JsonElement heard = await shown.EstimateAsync(() => shown.Field(Thickness).FillAsync(thickness));

        using HttpClient http = new() { BaseAddress = browser.Service };
        JsonElement sent = heard.GetProperty("order");
        JsonElement cushion = sent.GetProperty("cushions")[0];
        Assert.Equal(
            [Typed(width), Typed(depth), Typed(thickness)],
            [
                cushion.GetProperty("outline").GetProperty("width").GetString()!,
                cushion.GetProperty("outline").GetProperty("depth").GetString()!,
                cushion.GetProperty("thickness").GetString()!,
            ]
        );
        using HttpResponseMessage answered = await http.PostAsJsonAsync("/v1/yardage", sent);
        JsonElement line = (await answered.Content.ReadFromJsonAsync<JsonElement>()).GetProperty("yardage")[0];
        Assert.Equal(line.GetRawText(), heard.GetProperty("answer").GetProperty("yardage")[0].GetRawText());
        await Expect(shown.Told.Locator(".much")).ToHaveTextAsync(YardsOf(line.GetProperty("soldLength").GetDouble()));
        await Expect(shown.Told.Locator(".also")).ToHaveTextAsync($"{line.GetProperty("soldLength").GetDouble() * 0.9144:0.##} m");
        await Expect(shown.Told.Locator(".of")).ToContainTextAsync(fabric);
        await shown.UnfoldAsync("How so?");
        await Expect(shown.Page.Locator("cushion-estimate .reasons .because").First)
            .ToContainTextAsync(line.GetProperty("because").GetString()!);

        static string Typed(string text) => char.IsAsciiLetter(text[^1]) ? text : $"{text} in";

        static string YardsOf(double yards)
        {
            int eighths = (int)Math.Round(yards * 8);
            (int whole, int part) = (eighths / 8, eighths % 8);
            int common =
                part % 4 == 0 ? 4
                : part % 2 == 0 ? 2
                : 1;
            string fraction = part == 0 ? "" : $"{part / common}/{8 / common}";
            return $"{(whole == 0 ? "" : $"{whole} ")}{fraction}".Trim() + " yd";
        }
    }

    [SkippableFact]
    public async Task Changing_units_changes_neither_what_was_typed_nor_the_fabric()
    {
        await using ShownPage shown = await browser.OpenAsync();
        await shown.StateAsync("answered");
        JsonElement before = await shown.EstimateAsync(() => shown.Field(Width).FillAsync("17 3/16"));
        JsonElement metric = await shown.EstimateAsync(() => shown.ChooseAsync("/units", "cm"));
        Assert.Equal(("43.66", "7.62"), (await shown.Field(Width).InputValueAsync(), await shown.Field(Thickness).InputValueAsync()));
        Assert.Equal("cm", metric.GetProperty("answer").GetProperty("units").GetString());
        for (int round = 0; round < 5; round++)
        {
            await shown.EstimateAsync(() => shown.ChooseAsync("/units", "mm"));
            await shown.EstimateAsync(() => shown.ChooseAsync("/units", "cm"));
        }

        JsonElement after = await shown.EstimateAsync(() => shown.ChooseAsync("/units", "in"));

        Assert.Equal("17 3/16", await shown.Field(Width).InputValueAsync());
        Assert.Equal(before.GetProperty("answer").GetRawText(), after.GetProperty("answer").GetRawText());
        Assert.Equal(Sold(before), Sold(metric));

        static double Sold(JsonElement heard) =>
            heard.GetProperty("answer").GetProperty("yardage")[0].GetProperty("soldLength").GetDouble();
    }

    [SkippableTheory]
    [InlineData(1280)]
    [InlineData(360)]
    [InlineData(290)]
    public async Task A_length_is_shown_whole_and_as_the_language_writes_it(int width)
    {
        await using ShownPage shown = await browser.OpenShopAsync(ShopPages.Element(), language: "de", width: width);
        await shown.StateAsync("answered");
        await ShowsAsync("44", "18", "3");
        await shown.ChooseAsync("/units", "cm");
        await ShowsAsync("111,76", "45,72", "7,62");
        await shown.ChooseAsync("/units", "mm");
        await ShowsAsync("1117,6", "457,2", "76,2");
        await shown.ChooseAsync("/units", "in");
        await shown.Field(Width).FillAsync("44 15/16");
        await ShowsAsync("44 15/16", "18", "3");
        await shown.ChooseAsync("/units", "cm");
        await ShowsAsync("114,14", "45,72", "7,62");
        // What is typed stays, with either sign.
        await shown.Field(Depth).FillAsync("45.5");
        JsonElement heard = await shown.EstimateAsync(() => shown.Field(Width).FillAsync("100,25"));
        await ShowsAsync("100,25", "45.5", "7,62");
        JsonElement outline = heard.GetProperty("order").GetProperty("cushions")[0].GetProperty("outline");
        Assert.Equal(("100.25 cm", "45.5 cm"), (outline.GetProperty("width").GetString(), outline.GetProperty("depth").GetString()));
        Assert.Contains("100,25 × 45.5 × 7,62 cm", heard.GetProperty("lines").GetRawText(), StringComparison.Ordinal);

        async Task ShowsAsync(string across, string along, string high)
        {
            foreach ((string pointer, string text) in new[] { (Width, across), (Depth, along), (Thickness, high) })
            {
                await Expect(shown.Field(pointer)).ToHaveValueAsync(text);
                double spare = await shown.Field(pointer).EvaluateAsync<double>(Spare);
                Assert.True(spare >= 0, $"{text}: {-spare} px too long.");
            }
        }
    }

    // The room that a text leaves before the end of its field, or before its unit where that is shown.
    private const string Spare = """
        field => {
          const style = getComputedStyle(field);
          const pen = document.createElement("canvas").getContext("2d");
          pen.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
          const [box, unit] = [field.getBoundingClientRect(), field.nextElementSibling.getBoundingClientRect()];
          const begin = box.left + 1 + parseFloat(style.paddingLeft);
          const end = Math.min(box.right - 1 - parseFloat(style.paddingRight), unit.width > 0 ? unit.left : Infinity);
          return end - begin - pen.measureText(field.value).width;
        }
        """;

    [SkippableFact]
    public async Task A_shop_s_own_length_has_the_comma_of_the_language()
    {
        const string Metric = """
            { "order": { "units": "cm", "cushions": [{ "construction": "knife-edge",
              "outline": { "kind": "rectangle", "width": 40.125, "depth": "42.5 cm" } }],
              "fabrics": [{ "id": "linen", "width": 140, "sold": { "unit": "m", "step": 0.1 } }] } }
            """;
        foreach ((string language, string across) in new[] { ("de", "40,125"), ("en", "40.125"), ("ar-EG", "40.125") })
        {
            await using ShownPage shown = await browser.OpenShopAsync(ShopPages.Element(json: Metric), language);
            await shown.StateAsync("answered");
            await Expect(shown.Field(Width)).ToHaveValueAsync(across);
            await Expect(shown.Field(Depth)).ToHaveValueAsync("42.5 cm");
        }
    }

    [SkippableFact]
    public async Task Every_violation_is_beside_its_field()
    {
        await using ShownPage shown = await browser.OpenAsync();
        await shown.StateAsync("answered");
        await shown.Field(Width).FillAsync("300");
        await shown.Field(Thickness).FillAsync("thick");
        await shown.StateAsync("refused");

        foreach ((string pointer, string words) in new[] { (Width, "240 in"), (Thickness, "must be a length") })
        {
            await Expect(shown.Field(pointer)).ToHaveAttributeAsync("aria-invalid", "true");
            ILocator fault = shown.Page.Locator($"cushion-estimate #{await FaultOf(shown.Field(pointer))}");
            await Expect(fault).ToBeVisibleAsync();
            await Expect(fault).ToContainTextAsync(words, new() { IgnoreCase = true });
        }

        await Expect(shown.Page.GetByRole(AriaRole.Button, new() { Name = "Add to basket" })).ToBeDisabledAsync();
        await shown.Field(Width).FillAsync("30");
        await shown.Field(Depth).FillAsync("");
        await shown.StateAsync("needed");
        await Expect(shown.Problem).ToContainTextAsync("Depth");
        await Expect(shown.Told.Locator(".much")).ToHaveTextAsync("1 1/2 yd");
        await shown.Field(Depth).FillAsync("20");
        await shown.EstimateAsync(() => shown.Field(Thickness).FillAsync("2"));
        await Expect(shown.Field(Width)).ToHaveAttributeAsync("aria-invalid", "false");

        static async Task<string> FaultOf(ILocator field) =>
            (await field.GetAttributeAsync("aria-describedby"))!.Split(' ').Single(id => id.EndsWith("-fault", StringComparison.Ordinal));
    }

    [SkippableFact]
    public async Task A_size_that_is_typed_again_after_its_call_was_given_up_has_an_answer()
    {
        await using ShownPage shown = await browser.OpenAsync();
        await shown.StateAsync("answered");
        TaskCompletionSource held = new(TaskCreationOptions.RunContinuationsAsynchronously);
        // The first call is never answered.
        await shown.Page.RouteAsync("**/v1/quotes*", route => held.TrySetResult() ? Task.CompletedTask : route.ContinueAsync());
        await shown.Field(Width).FillAsync("31");
        await held.Task.WaitAsync(TimeSpan.FromSeconds(30));
        await shown.EstimateAsync(() => shown.Field(Width).FillAsync("32"));

        JsonElement heard = await shown.EstimateAsync(() => shown.Field(Width).FillAsync("31"));
        Assert.NotEqual(0, heard.GetProperty("answer").GetProperty("yardage").GetArrayLength());
        await shown.StateAsync("answered");
    }

    [SkippableFact]
    public async Task The_form_shows_the_fields_of_each_construction_and_outline_that_the_catalogue_lists()
    {
        await using ShownPage shown = await browser.OpenAsync();
        await shown.StateAsync("answered");
        using HttpClient http = new() { BaseAddress = browser.Service };
        JsonElement catalogue = await http.GetFromJsonAsync<JsonElement>("/v1/catalogue");
        foreach (JsonElement construction in catalogue.GetProperty("constructions").EnumerateArray())
        {
            await shown.ChooseAsync("/cushions/*/construction", construction.GetProperty("kind").GetString()!);
            Assert.Equal(construction.GetProperty("thickness").GetBoolean(), await shown.Field(Thickness).IsVisibleAsync());
            Assert.All(
                construction
                    .GetProperty("fields")
                    .EnumerateArray()
                    .Where(field => field.GetProperty("required").GetBoolean())
                    .Select(field => field.GetProperty("pointer").GetString()!),
                pointer => Assert.NotEqual(0, shown.Page.Locator($"cushion-estimate [name^=\"{pointer}\"]").CountAsync().Result)
            );
            foreach (
                string kind in await shown
                    .Field("/cushions/*/outline/kind")
                    .EvaluateAllAsync<string[]>("all => all.map(each => each.value)")
            )
            {
                await shown.ChooseAsync("/cushions/*/outline/kind", kind);
                string[] sizes =
                [
                    .. catalogue
                        .GetProperty("outlines")
                        .EnumerateArray()
                        .Single(outline => outline.GetProperty("kind").GetString() == kind)
                        .GetProperty("fields")
                        .EnumerateArray()
                        .Select(field => field.GetProperty("pointer").GetString()!)
                        // Lists of radii and arcs are for order systems; the form shows one radius for all corners.
                        .Where(pointer => !pointer.EndsWith("/corners", StringComparison.Ordinal))
                        .Where(pointer => !pointer.EndsWith("/arcs", StringComparison.Ordinal)),
                ];
                Assert.Equal(
                    sizes.Order(StringComparer.Ordinal),
                    await shown
                        .Page.Locator("cushion-estimate [name^=\"/cushions/*/outline/\"]:not([name$=kind])")
                        .EvaluateAllAsync<string[]>("all => all.map(each => each.name).sort()")
                );
            }
        }
    }
}
