using CushionService.BrowserTests.Hosting;
using Microsoft.Playwright;

namespace CushionService.BrowserTests;

/// <summary>The drawings as a browser sets them, with the letters that it has.</summary>
[Collection(BrowserGroup.Name)]
public sealed class DrawingTests(BrowserOfThisMachine browser)
{
    [SkippableTheory]
    [InlineData("pillow")]
    [InlineData("reading-nook")]
    [InlineData("terrace")]
    [InlineData("every-outline")]
    [InlineData("every-construction")]
    [InlineData("trimmings")]
    public async Task No_label_of_a_layout_leaves_its_piece(string order)
    {
        await using ShownPage shown = await browser.OpenAsync();
        Measured measured = await shown.Page.EvaluateAsync<Measured>(Measure, order);

        Assert.True(measured.Labels > 0);
        Assert.Empty(measured.Outside);
    }

    [SkippableTheory]
    [InlineData("en", 300)]
    [InlineData("en", 360)]
    [InlineData("en", 430)]
    [InlineData("es", 300)]
    [InlineData("fr", 360)]
    public async Task No_line_of_a_size_crosses_the_name_of_a_field(string language, int width)
    {
        await using ShownPage shown = await browser.OpenShopAsync(ShopPages.Element(), language, width: width);
        foreach (
            (string construction, string outline) in new[]
            {
                ("boxed", "rectangle"),
                ("boxed", "trapezoid"),
                ("knife-edge", "circle"),
                ("knife-edge", "rectangle"),
                ("bolster", "circle"),
            }
        )
        {
            await shown.StateAsync("answered");
            await shown.ChooseAsync("/cushions/*/construction", construction);
            await shown.ChooseAsync("/cushions/*/outline/kind", outline);
            await shown.Page.Locator("cushion-estimate .measure").First.WaitForAsync(new() { State = WaitForSelectorState.Attached });
            double gap = await shown.Page.EvaluateAsync<double>(Gap);

            Assert.True(gap >= 4, $"{construction}, {outline}: {gap} px.");
        }
    }

    // From the lowest line of the drawing down to the highest name.
    private const string Gap = """
        () => {
          const boxes = which => [...document.querySelector("cushion-estimate").shadowRoot.querySelectorAll(which)].map(
            each => each.getBoundingClientRect());
          return Math.min(...boxes(".docks label").map(({ top }) => top))
            - Math.max(...boxes(".picture path").map(({ bottom }) => bottom));
        }
        """;

    private sealed record Measured
    {
        public int Labels { get; set; }

        public string[] Outside { get; set; } = [];
    }

    // Every label names its piece and copy; the shape of that copy must hold the label's box.
    private const string Measure = """
        async name => {
          const order = await (await fetch(`/demo/${name}.json`)).json();
          const send = (call, accept) => fetch(`/v1/${call}`, {
            method: "POST", headers: { "Content-Type": "application/json", Accept: accept },
            body: JSON.stringify({ ...order, effort: "quick" }) });
          const layouts = (await (await send("layouts", "application/json")).json()).layouts;
          const outside = [];
          let labels = 0;
          for (const { fabric } of layouts) {
            const text = await (await send(`layouts?fabric=${fabric}`, "image/svg+xml")).text();
            const svg = document.body.appendChild(document.importNode(
              new DOMParser().parseFromString(text, "image/svg+xml").documentElement, true));
            svg.style.maxWidth = "none";
            for (const label of svg.querySelectorAll("[data-label] text")) {
              const { label: piece, copy } = label.parentElement.dataset;
              const [shape] = [...svg.querySelectorAll("[data-piece]")].filter(
                each => each.dataset.piece === piece && each.dataset.copy === copy);
              const [inner, outer] = [label.getBoundingClientRect(), shape.getBoundingClientRect()];
              labels += 1;
              if (inner.left < outer.left - 1 || inner.right > outer.right + 1 || inner.top < outer.top - 1
                || inner.bottom > outer.bottom + 1) {
                outside.push(`${piece} ${copy}: ${label.textContent}`);
              }
            }
            svg.remove();
          }
          return { labels, outside };
        }
        """;
}
