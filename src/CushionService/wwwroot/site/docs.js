// Shows the contract of this service, without a bar across the top and without a check by anyone else. Calls go to where the page came
// from, whatever address the document names.
const spec = await (await fetch("../openapi/v1.json")).json();
spec.servers = [{ url: location.origin }];
SwaggerUIBundle({
  spec,
  dom_id: "#swagger-ui",
  layout: "BaseLayout",
  presets: [SwaggerUIBundle.presets.apis],
  validatorUrl: null,
});
