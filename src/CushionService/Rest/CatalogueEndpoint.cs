using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Engine.Messages;
using CushionService.Json;
using CushionService.Languages;
using CushionService.Rejections;
using CushionService.Rest.Pages;
using CushionService.Wording;

namespace CushionService.Rest;

/// <summary>The call for what can be ordered. Its answer is the same for every caller until the next release.</summary>
internal static class CatalogueEndpoint
{
    // The only form of the catalogue.
    private const string MediaType = "application/json";

    // An hour bounds how long a page may show what the release before could make.
    private const string Caching = "max-age=3600";

    private static readonly JsonTypeInfo<CatalogueAnswer> AnswerType =
        (JsonTypeInfo<CatalogueAnswer>)ContractJson.Options.GetTypeInfo(typeof(CatalogueAnswer));

    // One for each language.
    private static readonly Lazy<FixedAnswer>[] Whole =
    [
        .. Enum.GetValues<Language>()
            .Select(language => new Lazy<FixedAnswer>(() =>
                new FixedAnswer(JsonSerializer.SerializeToUtf8Bytes(CatalogueWording.In(language), AnswerType), MediaType)
            )),
    ];

    /// <summary>Answers a request; with 406 when the caller does not take JSON.</summary>
    /// <param name="http">The call.</param>
    public static Task HandleAsync(HttpContext http)
    {
        if (AcceptHeader.Choose(http.Request.Headers.Accept, [MediaType]) < 0)
        {
            return Problems.WriteAsync(http, StatusCodes.Status406NotAcceptable, FormTexts.AnswersComeAs([MediaType]));
        }

        (FieldTree? fields, var violations) = CallQuery.Read(http.Request.Query, AnswerType);
        Language language = ReaderLanguage.Of(http);
        return violations.Count > 0
            ? Problems.WriteAsync(http, new Refusal(violations))
            : (fields is null ? Whole[(int)language].Value : Slim(language, fields)).WriteAsync(http, CacheScope.Of(http, Caching));
    }

    // Made for each call: there are more choices of fields than anyone would keep.
    private static FixedAnswer Slim(Language language, FieldTree fields)
    {
        using MemoryStream bytes = new();
        using (Utf8JsonWriter writer = new(bytes, AnswerText.Writing))
        {
            AnswerFields.Write(writer, CatalogueWording.In(language), fields);
        }

        return new FixedAnswer(bytes.ToArray(), MediaType);
    }
}
