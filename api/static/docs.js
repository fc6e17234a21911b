// The documentation of the interface, drawn from the document that the server itself serves.
window.ui = SwaggerUIBundle({
  url: "openapi.json",
  dom_id: "#reference",
  deepLinking: true,
  defaultModelsExpandDepth: -1,
  docExpansion: "list",
  displayRequestDuration: true,
  filter: true,
  tryItOutEnabled: true,
  validatorUrl: null,
});
