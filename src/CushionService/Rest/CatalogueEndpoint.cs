using System.Diagnostics;
using System.IO.Compression;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using CushionService.Access;
using CushionService.Admission;
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
/// <param name="work">Charged for answers that are made for one call.</param>
internal sealed class CatalogueEndpoint(WorkLimits work)
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
    public async Task HandleAsync(HttpContext http)
    {
        if (AcceptHeader.Choose(http.Request.Headers.Accept, [MediaType]) < 0)
        {
            await Problems.WriteAsync(http, StatusCodes.Status406NotAcceptable, FormTexts.AnswersComeAs([MediaType]));
            return;
        }

        (FieldTree? fields, var violations) = CallQuery.Read(http.Request.Query, AnswerType);
        Language language = ReaderLanguage.Of(http);
        if (violations.Count > 0)
        {
            await Problems.WriteAsync(http, new Refusal(violations));
        }
        else
        {
            FixedAnswer answer = fields is null ? Whole[(int)language].Value : await SlimAsync(http, language, fields);
            await answer.WriteAsync(http, CacheScope.Of(http, Caching));
        }
    }

    // Charged like an order, since it is made for this call alone.
    private async Task<FixedAnswer> SlimAsync(HttpContext http, Language language, FieldTree fields)
    {
        long began = Stopwatch.GetTimestamp();
        FixedAnswer slim = Slim(language, fields);
        await slim.PrepareAsync(http);
        work.Charge(Caller.Of(http), Stopwatch.GetElapsedTime(began));
        return slim;
    }

    // Made for each call: there are more choices of fields than anyone would keep.
    private static FixedAnswer Slim(Language language, FieldTree fields)
    {
        using MemoryStream bytes = new();
        using (Utf8JsonWriter writer = new(bytes, AnswerText.Writing))
        {
            AnswerFields.Write(writer, CatalogueWording.In(language), fields);
        }

        return new FixedAnswer(bytes.ToArray(), MediaType, level: CompressionLevel.Fastest);
    }
}
