// Shows the contract of this service, without a bar across the top and without a check by anyone else. Calls go to where the page came
// from, whatever address the document names.
const dark = matchMedia("(prefers-color-scheme: dark)");
const dress = () => document.documentElement.classList.toggle("dark-mode", dark.matches);
dark.addEventListener("change", dress);
dress();

const spec = await (await fetch("../openapi/v1.json")).json();
spec.servers = [{ url: location.origin }];
SwaggerUIBundle({
  spec,
  dom_id: "#swagger-ui",
  layout: "BaseLayout",
  presets: [SwaggerUIBundle.presets.apis],
  validatorUrl: null,
  // The schemas are long, and each call shows its own.
  defaultModelsExpandDepth: -1,
  onComplete: () => named(),
});

const NAMES = {
  "#servers": "Servers",
  ".body-param__text": "Request body",
  ".examples-select-element": "Example",
  ".close-modal": "Close",
  ".modal-btn.authorize": "Authorize",
};

// What the library leaves without a name, or out of reach of the keyboard.
function named() {
  const name = () => {
    for (const [part, label] of Object.entries(NAMES)) {
      document.querySelectorAll(part).forEach((control) => control.setAttribute("aria-label", label));
    }
    // Groups of calls come right under the page's own heading.
    document.querySelectorAll("h3.opblock-tag").forEach((heading) => heading.setAttribute("aria-level", "2"));
    document.querySelectorAll("pre.microlight").forEach((block) => (block.tabIndex = 0));
  };
  new MutationObserver(name).observe(document.getElementById("swagger-ui"), { childList: true, subtree: true });
  name();
}
