using System.Text.Json.Nodes;
using CushionService.Languages;
using Microsoft.AspNetCore.Mvc.ApiExplorer;
using Microsoft.Net.Http.Headers;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CushionService.Rest.OpenApi;

/// <summary>Gives the operations the names and sentences of the table of routes, and says what each status
/// means.</summary>
internal sealed class OperationDescriptions : IOperationFilter
{
    // The same in every call.
    private static readonly Dictionary<string, string> Meanings = new()
    {
        ["200"] = "The answer.",
        ["304"] = "The caller holds the answer already.",
        ["400"] = "The order cannot be read: not JSON, or not of the contract's types.",
        ["401"] = "The call needs a key or a token, or the one that came is not known here.",
        ["403"] = "The caller is known but may not do this, or not with this order.",
        ["406"] = "The caller accepts no form that this answer comes in.",
        ["413"] = "The order is longer than 1 MiB.",
        ["415"] = "The order is not application/json in UTF-8.",
        ["422"] =
            "The order can be read but breaks rules, or has no answer in its time (too-slow), or the query names what there is not; each "
            + "is listed with its place.",
        ["429"] =
            "The caller calls too often. Retry-After says in how many seconds to call again; RateLimit on every answer says what is left.",
        ["500"] = "The service failed. The problem names a code and the trace, and nothing else.",
        ["503"] =
            "More to do than can be done (busy), or the authority of tokens does not answer. Retry-After says in how many seconds to call "
            + "again.",
    };

    // The header of rejections.
    private static readonly OpenApiHeader SecondsToWait = new()
    {
        Description = "Seconds after which to call again.",
        Required = true,
        Schema = new OpenApiSchema
        {
            Type = JsonSchemaType.Integer,
            Format = "int32",
            Minimum = "1",
            Maximum = "86400",
        },
    };

    private const string WantedLanguages =
        "The languages of the sentences, by preference: `de-AT, en;q=0.5`. Of those that the service writes, which are en, de, fr and es, "
        + "the preferred one; English where there is none.";

    // The line of a request has at most 8 KiB.
    private const int LongestParameter = 8_000;

    private const string ChosenLanguage = "The language of the sentences. By `Accept-Language` when left out.";

    private static readonly OpenApiHeader WrittenLanguage = new()
    {
        Description = "The language of the sentences.",
        Required = true,
        Schema = TagSchema(),
    };

    /// <summary>The name of an operation.</summary>
    public static string IdOf(ApiDescription description) => TextOf(description).Operation;

    /// <summary>The heading that an operation is listed under.</summary>
    public static string TagOf(ApiDescription description) => TextOf(description).Tag;

    /// <summary>Completes an operation: its sentences, the parameters that say which part of the answer, and its
    /// responses.</summary>
    /// <exception cref="KeyNotFoundException">A status has no meaning here.</exception>
    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        OperationText text = TextOf(context.ApiDescription);
        (operation.Summary, operation.Description) = (text.Summary, text.Description);
        foreach (PartParameter part in context.ApiDescription.ActionDescriptor.EndpointMetadata.OfType<PartParameter>())
        {
            Add(operation, part.Name, part.Description);
        }

        if (AnswersInJson(operation))
        {
            Add(
                operation,
                CallQuery.Fields,
                "The fields of the answer in JSON that are wanted, separated by commas: `yardage,cost.total`. All when left out."
            );
        }

        if (context.ApiDescription.ActionDescriptor.EndpointMetadata.OfType<LanguageParameterAttribute>().Any())
        {
            operation.Parameters!.Add(Languages(LanguageParameterAttribute.Name, ParameterLocation.Query, ChosenLanguage));
        }

        (operation.Parameters ??= []).Add(Languages(HeaderNames.AcceptLanguage, ParameterLocation.Header, WantedLanguages));
        foreach ((string status, IOpenApiResponse response) in operation.Responses ?? [])
        {
            response.Description = Meanings[status];
            Dictionary<string, IOpenApiHeader> headers = new() { [HeaderNames.ContentLanguage] = WrittenLanguage };
            if (status is "429" or "503")
            {
                headers.Add(HeaderNames.RetryAfter, SecondsToWait);
            }

            ((OpenApiResponse)response).Headers = headers;

            foreach ((string mediaType, IOpenApiMediaType content) in response.Content ?? new Dictionary<string, IOpenApiMediaType>())
            {
                // Drawings and sheets are text, or bytes, and not the record that they show.
                if (!mediaType.EndsWith("json", StringComparison.Ordinal))
                {
                    bool isBytes = mediaType is "application/pdf" or "image/vnd.dxf";
                    ((OpenApiMediaType)content).Schema = new OpenApiSchema
                    {
                        Type = JsonSchemaType.String,
                        Format = isBytes ? "binary" : null,
                    };
                }
            }
        }
    }

    // Drawings and labels have no fields to ask for.
    private static bool AnswersInJson(OpenApiOperation operation) =>
        operation.Responses!["200"].Content is { } forms && forms.Keys.Any(form => form.Contains("json", StringComparison.Ordinal));

    private static OpenApiParameter Languages(string name, ParameterLocation place, string description) =>
        new()
        {
            Name = name,
            In = place,
            Description = description,
            Schema = place == ParameterLocation.Query ? TagSchema() : new OpenApiSchema { Type = JsonSchemaType.String },
        };

    private static OpenApiSchema TagSchema() =>
        new() { Type = JsonSchemaType.String, Enum = [.. LanguageTags.All.Select(tag => (JsonNode)tag)] };

    private static void Add(OpenApiOperation operation, string name, string description) =>
        (operation.Parameters ??= []).Add(
            new OpenApiParameter
            {
                Name = name,
                In = ParameterLocation.Query,
                Description = description,
                Schema = new OpenApiSchema { Type = JsonSchemaType.String, MaxLength = LongestParameter },
            }
        );

    // Every described endpoint comes from the table of routes, and has its text.
    private static OperationText TextOf(ApiDescription description) =>
        description.ActionDescriptor.EndpointMetadata.OfType<OperationText>().First();
}
