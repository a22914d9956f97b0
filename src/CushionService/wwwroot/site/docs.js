// Shows the contract of this service, without a bar across the top and without a check by anyone else.
SwaggerUIBundle({
  url: "../openapi/v1.json",
  dom_id: "#swagger-ui",
  layout: "BaseLayout",
  presets: [SwaggerUIBundle.presets.apis],
  validatorUrl: null,
});
