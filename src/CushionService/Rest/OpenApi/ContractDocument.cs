using System.Reflection;
using System.Text;
using CushionService.Engine.Measures;
using CushionService.Nesting;
using Microsoft.OpenApi;

namespace CushionService.Rest.OpenApi;

/// <summary>The OpenAPI document: made from the endpoints, the contract's records and their XML documentation.</summary>
internal static class ContractDocument
{
    internal const string Version = "v1";
    private const string Option = "--write-openapi";

    private static readonly Assembly[] Documented = [typeof(ContractDocument).Assembly, typeof(Length).Assembly, typeof(Effort).Assembly];

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
                    Description =
                        "Cushion orders in; pieces, layouts, yardage, materials and cost out. Stateless: the same order always gets the same answer. "
                        + "In a request, a member that is null counts as left out. In an answer, every member is written, null where it has no value; only the range of "
                        + "a violation is left out where none applies.",
                }
            );
            options.AddServer(new OpenApiServer { Url = "/", Description = "This service." });
            options.CustomOperationIds(OperationDescriptions.IdOf);
            options.TagActionsBy(description => [OperationDescriptions.TagOf(description)]);
            options.SupportNonNullableReferenceTypes();
            options.NonNullableReferenceTypesAsRequired();
            foreach (Assembly assembly in Documented)
            {
                options.IncludeXmlComments(assembly);
            }

            options.SchemaFilter<ContractSchemas>();
            options.OperationFilter<EstimateParameters>();
            options.OperationFilter<OperationDescriptions>();
            options.OperationFilter<Examples>();
            options.DocumentFilter<SecuritySchemes>();
            options.OperationFilter<SecuritySchemes>();
        });
    }

    public static void MapContractDocument(this WebApplication app)
    {
        app.MapMethods(
                $"/openapi/{Version}.json",
                [HttpMethods.Get, HttpMethods.Head],
                static async (RenderedContract contract) =>
                {
                    RenderedContract.Text text = await contract.Document;
                    return Results.Bytes(text.Bytes, "application/json; charset=utf-8", entityTag: text.Tag);
                }
            )
            .ExcludeFromDescription();
        app.UseWhen(
            static http => http.Request.Path.StartsWithSegments("/docs"),
            docs =>
                docs.UseSwaggerUI(options =>
                {
                    options.RoutePrefix = "docs";
                    options.DocumentTitle = "CushionService";
                    // A page and a start script of our own: the library's script adds a bar with its maker's name.
                    options.IndexStream = static () =>
                        File.OpenRead(Path.Combine(AppContext.BaseDirectory, "wwwroot", "site", "docs.html"));
                })
        );
    }

    /// <summary>Writes the document to the file that the command line names, if it does.</summary>
    /// <returns>Whether it did.</returns>
    public static async Task<bool> WriteContractIfAskedAsync(this WebApplication app, string[] args)
    {
        if (args is not [Option, string path])
        {
            return false;
        }

        // The endpoints are known to the rest of the house once a pipeline uses them; nothing is started, and no port opened.
        app.UseRouting();
        app.UseEndpoints(_ => { });
        string text = Encoding.UTF8.GetString((await app.Services.GetRequiredService<RenderedContract>().Document).Bytes) + "\n";
        if (!File.Exists(path) || await File.ReadAllTextAsync(path) != text)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(path))!);
            await File.WriteAllTextAsync(path, text);
        }

        return true;
    }
}
