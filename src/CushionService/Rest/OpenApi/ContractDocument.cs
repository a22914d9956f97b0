using System.Reflection;
using System.Text;
using System.Text.Json.Nodes;
using CushionService.Engine.Measures;
using CushionService.Nesting;
using CushionService.Rest.Pages;
using Microsoft.OpenApi;

namespace CushionService.Rest.OpenApi;

/// <summary>The OpenAPI document (version 3.1): made from the table of routes, the contract's records and their XML
/// documentation, so that it cannot differ from what the service does.</summary>
internal static class ContractDocument
{
    /// <summary>The version of the contract, which is part of every path.</summary>
    internal const string Version = "v1";

    // Where a service that nobody has configured answers.
    private const string Address = "http://localhost:8080";

    // Of the command line, with which the build writes the document.
    private const string Option = "--write-openapi";

    // The contract has enumerations of the engine and of the nesting, with their documentation.
    private static readonly Assembly[] Documented = [typeof(ContractDocument).Assembly, typeof(Length).Assembly, typeof(Effort).Assembly];

    /// <summary>Adds the generator, and the filters that complete what it finds.</summary>
    public static void AddContractDocument(this IServiceCollection services)
    {
        services.AddSingleton<RenderedContract>();
        services.AddEndpointsApiExplorer();
        services.AddSwaggerGen(options =>
        {
            options.SwaggerDoc(
                Version,
                new OpenApiInfo
                {
                    Title = "CushionService",
                    Version = "1.0.0",
                    License = new OpenApiLicense { Name = "All rights reserved; notices of what it is built on are in NOTICE" },
                    Contact = new OpenApiContact { Name = "The operator of this service", Url = new Uri(Address + "/guide/") },
                    Description =
                        "Cushion orders in; pieces, layouts, yardage, materials and cost out. Stateless: the same order always "
                        + "gets the same answer. In a request, a member that is null counts as left out. In an answer, every member "
                        + "is written, null where it has no value; only the range of a violation is left out where none applies. "
                        + "Sentences come in English, German, French or Spanish; [the register of messages](/guide/messages-register.md) "
                        + "lists every `key` with its `arguments`.",
                }
            );
            // Generators want an address; the page to try the calls puts its own in its place.
            OpenApiServer server = new() { Url = Address, Description = "This service on its own machine: local." };
            server.AddExtension("x-internal", new JsonNodeExtension(false));
            options.AddServer(server);
            options.CustomOperationIds(OperationDescriptions.IdOf);
            options.TagActionsBy(description => [OperationDescriptions.TagOf(description)]);
            options.SupportNonNullableReferenceTypes();
            options.NonNullableReferenceTypesAsRequired();
            foreach (Assembly assembly in Documented)
            {
                options.IncludeXmlComments(assembly);
            }

            options.MapType<JsonObject>(() => new OpenApiSchema { Type = JsonSchemaType.Object });
            options.SchemaFilter<ContractSchemas>();
            options.SchemaFilter<CodeSchemas>();
            options.OperationFilter<EstimateParameters>();
            options.OperationFilter<OperationDescriptions>();
            options.OperationFilter<Examples>();
            options.OperationFilter<ResponseHeaders>();
            options.OperationFilter<StreamSchemas>();
            options.DocumentFilter<SecuritySchemes>();
            options.DocumentFilter<DocumentText>();
            options.OperationFilter<SecuritySchemes>();
        });
    }

    /// <summary>Maps the document, and what the page to try the calls is made of.</summary>
    public static void MapContractDocument(this WebApplication app)
    {
        app.MapMethods(
                $"/openapi/{Version}.json",
                FixedRoutes.Methods,
                static async (HttpContext http, RenderedContract contract) => await (await contract.Document).WriteAsync(http)
            )
            .ExcludeFromDescription();
        app.UseWhen(
            // The page itself is one of ours, in every language, with a start script of our own: the library's script adds a bar with its
            // maker's name.
            static http =>
                http.Request.Path.StartsWithSegments("/docs") && http.Request.Path != SitePages.Calls,
            static docs => docs.UseSwaggerUI(options => options.RoutePrefix = "docs")
        );
    }

    /// <summary>Writes the document to the file that the command line names, if it does.</summary>
    /// <remarks>The service does not start for it, and opens no port. A file that is the same already is left alone,
    /// for builds that look at its time.</remarks>
    /// <param name="app">The service.</param>
    /// <param name="args">The command line.</param>
    /// <returns>Whether the command line asks for the document.</returns>
    public static async Task<bool> WriteContractIfAskedAsync(this WebApplication app, string[] args)
    {
        if (args is not [Option, string path])
        {
            return false;
        }

        // The generator sees the endpoints once a pipeline uses them.
        app.UseRouting();
        app.UseEndpoints(_ => { });
        string text = Encoding.UTF8.GetString(await app.Services.GetRequiredService<RenderedContract>().RenderAsync()) + "\n";
        if (!File.Exists(path) || await File.ReadAllTextAsync(path) != text)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(path))!);
            await File.WriteAllTextAsync(path, text);
        }

        return true;
    }
}
